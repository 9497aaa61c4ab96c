import { en } from '../../src/words/en/en.js';
import type { Language } from '../../src/words/language.js';

/** Its tag: ISO 639 keeps `qaa` to `qtz` for languages of one’s own. */
export const MADE_UP = 'qaa';

/** They stand as they are in every language. */
const UNITS = new Set(['in', 'cm', 'mm', 'yd', 'ft']);
const VOWELS = 'aeioua';
const ENDING = 'senorimatulesenorimatule';

/** Begins with a letter that English has not, has other vowels, and is 40 % longer. */
const otherWord = (word: string): string => {
  if (UNITS.has(word) || /^ž/i.test(word)) return word;
  const plain = word.toLowerCase().replace(/[aeiou]/g, (vowel) => VOWELS[VOWELS.indexOf(vowel) + 1]!);
  const long = `ž${plain}${ENDING.slice(0, Math.ceil(word.length * 1.4) - word.length - 1)}`;
  return word[0] === word[0]!.toLowerCase() ? long : `${long[0]!.toUpperCase()}${long.slice(1)}`;
};

/** Units, numbers and letters are as they were. */
export const otherWords = (text: string): string => text.replace(/\p{L}{2,}/gu, otherWord);

const madeUpOf = (words: unknown): unknown => {
  if (typeof words === 'string') return otherWords(words);
  if (typeof words === 'function')
    return (...of: unknown[]) => otherWords(String((words as (...of: unknown[]) => unknown)(...of)));
  if (typeof words !== 'object' || !words) return words;
  return Object.fromEntries(Object.entries(words).map(([key, value]) => [key, madeUpOf(value)]));
};

const language = madeUpOf(en) as Language;

/** A language in which every word is another, and 40 % longer than in English. */
export const madeUp: Language = { ...language, common: { ...language.common, lang: MADE_UP } };

/** The words of a text that are of no made-up language: all but units, and letters that stand alone. */
export const ofAnotherLanguage = (text: string): string[] =>
  (text.match(/\p{L}{2,}/gu) ?? []).filter((word) => !UNITS.has(word) && !/^ž/i.test(word));
