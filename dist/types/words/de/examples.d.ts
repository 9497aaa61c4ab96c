import type { Example } from '../../ledger/field.js';
import type { Quantity, Stated } from '../../ledger/quantity.js';
import type { Forms, Teller } from '../teller.js';
/** An example as this page reads it: German is also spoken where a point marks decimals, as in Switzerland. */
export declare const so: (text: string, { style }: Teller) => string;
/** `a, b und c` */
export declare const listed: (things: readonly string[]) => string;
/** Examples or choices: `a, b oder c` */
export declare const or: (examples: readonly string[], t: Teller) => string;
/** Examples for a sentence, metric ones first. */
export declare const like: (examples: Example, t: Teller) => string;
/** Texts that the parser reads where a comma marks decimals; the tests go through all of them. */
export declare const LENGTHS: string[];
export declare const TOGETHER: string[];
export declare const SUM = "5 cm + 10 cm";
export declare const PRODUCT = "3 * 30 cm";
export declare const BRACKETED = "2 * (30 + 10) cm";
export declare const STEPS: string[];
export declare const SEVERAL = "5; 11,5 cm";
export declare const SIZE = "150 x 200 cm";
export declare const SHEET = "45 x 50 cm";
export declare const CUT_LINE = "A | Quadrat | 9 cm | 12";
export declare const PACKAGE = "gro\u00DF 230 x 250 cm @ 29";
export declare const PRICE = "12,50";
/** What a shop's step or a mark of a ruler makes of a length. */
export declare const upTo: (step: Stated, t: Teller) => string;
/** `66 ≥ 65 in` */
export declare const reaches: (reach: Quantity, need: Quantity, t: Teller) => string;
export declare const STRIP: Forms;
export declare const BLOCK: Forms;
