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
 * The lengths to buy for these needs. Each length is a list of places in `needs`. Usually it is one length for all. If a shop cuts
 * by two sizes, one length of each may be less: 1/3 yd and 1/4 yd are less than one length of 5/8 yd. More than two never helps,
 * because two lengths of the same size can be one.
 */
export declare const inLengths: (needs: Exact[], step: Step) => number[][];
/** What a price is for: a yard, or a metre if the shop's step is metric. */
export declare const toPriced: (inches: Exact, { unit }: Step) => Exact;
/** Money, rounded to the smallest coin of a currency with this many decimals. */
export declare const toCoin: (value: Exact, decimals: number) => Exact;
/** Cloth as a bolt or a label says it, in the unit that gives the rounder number: `15 yd`, `13.5 m`. */
export declare const soldLength: (inches: Exact, { units, comma }: Style) => string;
