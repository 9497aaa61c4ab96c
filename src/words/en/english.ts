import { vocabularyOf, type OwnWords } from '../common.js';
import type { Vocabulary } from '../teller.js';
import { common } from './common.js';
import { face } from './face.js';

const made = new WeakMap<OwnWords, Vocabulary>();

/** A calculator's words in English, with the face's. */
export const inEnglish = (words: OwnWords): Vocabulary => {
  let vocabulary = made.get(words);
  if (!vocabulary) made.set(words, (vocabulary = vocabularyOf(common, words, face)));
  return vocabulary;
};
