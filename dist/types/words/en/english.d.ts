import { type OwnWords } from '../common.js';
import type { Vocabulary } from '../teller.js';
/** A calculator's words in English, with the face's. */
export declare const inEnglish: (words: OwnWords) => Vocabulary;
