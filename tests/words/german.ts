import type { CalculatorName } from '../../src/calculators/calculator.js';
import type { Style } from '../../src/measure/format.js';
import { vocabularyOf } from '../../src/words/common.js';
import { de } from '../../src/words/de/de.js';
import { backing } from '../../src/words/en/backing.js';
import { batting } from '../../src/words/en/batting.js';
import { binding } from '../../src/words/en/binding.js';
import { block } from '../../src/words/en/block.js';
import { borders } from '../../src/words/en/borders.js';
import { common } from '../../src/words/en/common.js';
import { cutting } from '../../src/words/en/cutting.js';
import { face } from '../../src/words/en/face.js';
import { spreadsheet } from '../../src/words/en/spreadsheet.js';
import { sleeve } from '../../src/words/en/sleeve.js';
import { top } from '../../src/words/en/top.js';
import { worksheet } from '../../src/words/en/worksheet.js';
import type { Language } from '../../src/words/language.js';
import { Teller, type Vocabulary } from '../../src/words/teller.js';

const en: Language = {
  common,
  face,
  spreadsheet,
  calculators: { backing, batting, binding, block, borders, cutting, sleeve, top, worksheet },
};

export const NAMES = Object.keys(en.calculators) as CalculatorName[];

const vocabulary = ({ common, face, spreadsheet, calculators }: Language, name: CalculatorName): Vocabulary =>
  vocabularyOf(common, calculators[name], { ...face, ...spreadsheet });

const tellers = new Map<string, Teller>();

/** Makes a calculator's sentences; a worksheet's in the words of its parts. */
const tellerIn = (language: Language, name: CalculatorName, style: Style, lang: string): Teller => {
  const key = JSON.stringify([lang, name, style]);
  let teller = tellers.get(key);
  if (!teller) {
    const others = Object.fromEntries(NAMES.map((name) => [name, vocabulary(language, name)]));
    teller = new Teller({ ...vocabulary(language, name), others }, style, lang);
    tellers.set(key, teller);
  }
  return teller;
};

export const inGerman = (name: CalculatorName, style: Style, lang = 'de'): Teller =>
  tellerIn(de, name, { comma: lang === 'de', ...style }, lang);
export const inEnglish = (name: CalculatorName, style: Style): Teller => tellerIn(en, name, style, 'en');

/** What an author writes for a page is no word of a language: markup, the codes of a choice. */
const withoutMarkup = (text: string): string =>
  text.replace(/<[^>]*>|[\w-]+="[^"]*"|eight-four oder strips/g, '');
const ENGLISH =
  /\b(the|of|and|with|cloth|write|strips?|joins?|from|widths?|lengths?|each|buy|like|borders?|sashing|cut|or|is|are|not|yards?|inch(es)?|fabric|seams?|sheets?)\b/i;
const BROKEN = /undefined|NaN|\[object|null|\$\{|=>| {2}|\.\.$|,\./;

/** A German text that is not good enough, or undefined if it is good. */
export const faultIn = (text: string): string | undefined =>
  !text.trim() || BROKEN.test(text) || ENGLISH.test(withoutMarkup(text)) ? `“${text}”` : undefined;

/** The numbers in a text, each as it is written in English. */
export const numbersIn = (text: string, lang: 'de' | 'en'): string[] => {
  const plain =
    lang === 'de'
      ? text.replace(/(\d)\.(?=\d{3}(\D|$))/g, '$1').replace(/(\d),(?=\d)/g, '$1.')
      : text.replace(/(\d),(?=\d{3})/g, '$1');
  return (plain.match(/\d+(\.\d+)?/g) ?? []).sort();
};
