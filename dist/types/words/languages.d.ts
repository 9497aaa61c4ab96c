import type { CalculatorName } from '../calculators/calculator.js';
import type { Language } from './language.js';
import type { Vocabulary } from './teller.js';
/** Adds a language. From now on, results and elements can speak it. */
export declare const learn: (language: Language) => void;
/** A language tag and the more general ones: `de-AT`, `de`. */
export declare const tagsOf: (lang: string) => string[];
/** A calculator's words in this language, or in English if we do not have it. */
export declare const wordsIn: (lang: string, name: CalculatorName, english: Vocabulary) => Vocabulary;
