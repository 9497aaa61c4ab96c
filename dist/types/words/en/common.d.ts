import type { CommonWords } from '../common.js';
/** What all calculators share, in English. */
export declare const common: CommonWords;
