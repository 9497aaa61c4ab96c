import type { CalculatorName } from '../calculators/calculator.js';
import { vocabularyOf } from './common.js';
import type { Language } from './language.js';
import type { Vocabulary } from './teller.js';

/** The languages besides English that this page knows, by their tags. */
const learned = new Map<string, Language>();
const vocabularies = new Map<string, Vocabulary>();

/** Adds a language. From now on, results and elements can speak it. */
export const learn = (language: Language): void => {
  learned.set(language.common.lang.toLowerCase(), language);
  vocabularies.clear();
};

/** A language tag and the more general ones: `de-AT`, `de`. */
export const tagsOf = (lang: string): string[] => {
  const parts = lang.toLowerCase().split('-');
  return parts.map((_, at) => parts.slice(0, parts.length - at).join('-'));
};

/** A calculator's words in this language, or in English if we do not have it. */
export const wordsIn = (lang: string, name: CalculatorName, english: Vocabulary): Vocabulary => {
  if (!learned.size) return english;
  const tag = tagsOf(lang).find((tag) => learned.has(tag));
  const language = tag === undefined ? undefined : learned.get(tag);
  if (!language) return english;
  const key = `${tag} ${name}`;
  let words = vocabularies.get(key);
  if (!words) {
    const { common, calculators, face, spreadsheet } = language;
    vocabularies.set(key, (words = vocabularyOf(common, calculators[name], { ...face, ...spreadsheet })));
  }
  return words;
};
