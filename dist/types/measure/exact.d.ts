import Fraction from 'fraction.js';
/** An exact rational number. A length is always a number of inches. */
export type Exact = Fraction;
/** Anything an exact number can be made of; a string is a decimal or a fraction ("52.5", "105/2", "52 1/2"). */
export declare const exact: (value: number | string | bigint | Exact, divisor?: number | bigint) => Exact;
/** Of whichever copy of the script: a page may have two. */
export declare const isExact: (value: unknown) => value is Exact;
export declare const ZERO: Fraction;
export declare const ONE: Fraction;
/** Of one value or more. */
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
/** The least whole number, counting from `from`, that fits; whatever is above one that fits must fit too. */
export declare const leastWhole: (fits: (count: number) => boolean, from?: number) => number;
/** The greatest multiple of a step whose square is not above the value. */
export declare const rootDown: (value: Exact, step: Exact) => Exact;
/**
 * A square root that is never short: the least multiple of 1/1,000,000 whose square is not below the value. A 6 3/8 in block
 * on point needs so fine a one: its corner square is above a mark by 0.000007 in less than anybody can cut. A root that is
 * a whole number or a fraction is found exactly: what is in centimetres is a fraction of an inch.
 */
export declare const rootUp: (value: Exact) => Exact;
