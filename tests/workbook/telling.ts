import { backing } from '../../src/words/en/backing.js';
import { batting } from '../../src/words/en/batting.js';
import { binding } from '../../src/words/en/binding.js';
import { borders } from '../../src/words/en/borders.js';
import { cutting } from '../../src/words/en/cutting.js';
import { inEnglish } from '../../src/words/en/english.js';
import { top } from '../../src/words/en/top.js';
import { worksheet } from '../../src/words/en/worksheet.js';
import { Teller, type Vocabulary } from '../../src/words/teller.js';

const others = Object.fromEntries(
  Object.entries({ backing, batting, binding, borders, cutting, top }).map(([name, words]) => [
    name,
    inEnglish(words),
  ]),
);

/** Makes a worksheet's sentences in English, with those of its parts; some of these may be other than usual. */
export const telling = (own: Record<string, Vocabulary> = {}): Teller =>
  new Teller({ ...inEnglish(worksheet), others: { ...others, ...own } }, { units: 'in' }, 'en');

export const t = telling();
