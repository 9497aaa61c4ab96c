import type { CalculatorName } from '../calculators/calculator.js';
import type { Language } from './language.js';
import type { Vocabulary } from './teller.js';
/** Takes on a language: from now on results and elements in it speak it. */
export declare const learn: (language: Language) => void;
/** A language tag and what it is a kind of: `de-AT`, `de`. */
export declare const tagsOf: (lang: string) => string[];
/** A calculator's words in this language, or in English where it is not known. */
export declare const wordsIn: (lang: string, name: CalculatorName, english: Vocabulary) => Vocabulary;
