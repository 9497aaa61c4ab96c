import type { CommonWords } from '../common.js';
/** What all calculators share, in German. */
export declare const common: CommonWords;
