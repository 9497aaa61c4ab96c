import Fraction from 'fraction.js';
/** An exact rational number. A length is always a number of inches. */
export type Exact = Fraction;
/** What an exact number can be made from. A string is a decimal or a fraction ("52.5", "105/2", "52 1/2"). */
export declare const exact: (value: number | string | bigint | Exact, divisor?: number | bigint) => Exact;
/** Knows exact numbers from another copy of the script too: a page may load two. */
export declare const isExact: (value: unknown) => value is Exact;
export declare const ZERO: Fraction;
export declare const ONE: Fraction;
/** Takes one value or more. */
export declare const least: (...values: Exact[]) => Exact;
export declare const most: (...values: Exact[]) => Exact;
export declare const sum: (values: Exact[]) => Exact;
/** The least whole number that is not below the value. */
export declare const wholeUp: (value: Exact) => number;
/** The greatest whole number that is not above the value. */
export declare const wholeDown: (value: Exact) => number;
export declare const upTo: (value: Exact, step: Exact) => Exact;
export declare const downTo: (value: Exact, step: Exact) => Exact;
export declare const nearestTo: (value: Exact, step: Exact) => Exact;
/** A size to cut, on a ruler mark: rounded up, unless it is above a mark by less than anybody can cut. */
export declare const toMark: (value: Exact, mark: Exact) => Exact;
/** The least whole number from `from` on that fits. If one fits, every larger one has to fit too. */
export declare const leastWhole: (fits: (count: number) => boolean, from?: number) => number;
/** The greatest multiple of a step whose square is not above the value. */
export declare const rootDown: (value: Exact, step: Exact) => Exact;
/**
 * A square root that is never short: the least multiple of 1/1,000,000 whose square is not below the value. It has to be this
 * fine for a 6 3/8 in block on point: without it, its corner square would go up one more mark of the ruler. If the root is a
 * whole number or a fraction, it is exact. (A length in centimetres is a fraction of an inch.)
 */
export declare const rootUp: (value: Exact) => Exact;
