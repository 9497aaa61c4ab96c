import { type Exact } from './exact.js';
import { type Style } from './format.js';
import { type Parsed, type Reading } from './parse.js';
/** The step a shop cuts cloth in, and the unit it sells by. */
export interface Step {
    /** Every multiple of each of these, in inches, can be bought: one size, or eighths and thirds of a yard. */
    sizes: Exact[];
    unit: 'yd' | 'm' | 'in';
}
/** Reads a cutting step: `1/8 yd`, `1/4 yd`, `thirds` (eighths and thirds of a yard), `10 cm`. */
export declare const parseStep: (text: string, reading: Reading) => Parsed<Step>;
/** The least amount the shop cuts that is not below the need. */
export declare const toStep: (inches: Exact, { sizes }: Step) => Exact;
/** The next amount the shop cuts above this one. */
export declare const stepAbove: (inches: Exact, { sizes }: Step) => Exact;
/**
 * The lengths to buy for these needs, each as places in their list. All are one length, unless a shop cuts by two sizes and
 * one length of each comes to less: 1/3 yd and 1/4 yd are less than the 5/8 yd that both would be. Any more lengths would
 * come to no less, since lengths of one size can be one. Never more than a length for each need.
 */
export declare const inLengths: (needs: Exact[], step: Step) => number[][];
/** What a price is of: yards, or metres where the shop's step is metric. */
export declare const toPriced: (inches: Exact, { unit }: Step) => Exact;
/** Money to the smallest coin, of so many decimals. */
export declare const toCoin: (value: Exact, decimals: number) => Exact;
/** Cloth as a bolt or a shop's label has it, in the unit it comes out round in: `15 yd`, `13.5 m`. */
export declare const soldLength: (inches: Exact, { units, comma }: Style) => string;
