import type { CommonWords } from '../common.js';
/** A shop's step, as a sentence names it. */
export declare const stepOf: (text: string) => string;
/** What all calculators share, in English. */
export declare const common: CommonWords;
