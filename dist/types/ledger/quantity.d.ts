import { Branded } from '../measure/brand.js';
import { type Exact } from '../measure/exact.js';
/** What a number is. This decides how it is shown, and what may be added to it. */
export type Kind = 'length' | 'count' | 'number' | 'percent' | 'money';
/**
 * How a number was got from others:
 * - `row`: it is the value of another row
 * - `number`: it is a number of its own
 * - `result`: it knows how it was got, but shows only its value
 * - `up`: rounded up to whole steps
 * - `step`: rounded up to whole steps of one of several sizes, the one that gives the least
 * - `mark`: rounded to a mark of the ruler
 * - `coin`: rounded to the nearest coin
 */
export type Operation = 'number' | 'row' | '+' | '−' | '×' | '÷' | '×√2' | '÷√2' | '√' | 'up' | 'step' | 'mark' | 'coin' | 'result';
/**
 * A number that knows how it was got: an exact value, with the operation and the quantities that gave it. The same call works out
 * the value and keeps the formula. So the number and its working cannot differ.
 */
export declare class Quantity extends Branded {
    #private;
    readonly value: Exact;
    readonly kind: Kind;
    readonly operation: Operation;
    readonly parts: readonly Quantity[];
    /** For a `row`: its id, and which entry, if the row holds a list. */
    readonly row: string;
    readonly entry: number;
    get brand(): 'quantity';
    constructor(value: Exact, kind: Kind, operation?: Operation, parts?: readonly Quantity[], 
    /** For a `row`: its id, and which entry, if the row holds a list. */
    row?: string, entry?: number);
    plus(other: Quantity): Quantity;
    minus(other: Quantity): Quantity;
    /** A multiple, `2 × 4`, or a part, `40 × (1 − 3 %)`. */
    times(other: Quantity | number): Quantity;
    over(other: Quantity | number): Quantity;
    /** What is left after a loss in percent: `× (1 − 3 %)`. */
    lessPercent(percent: Quantity): Quantity;
    /** What was there before a loss in percent: `÷ (1 − 3 %)`. */
    beforeLoss(percent: Quantity): Quantity;
    /** The diagonal of a square with this side, never short. */
    diagonal(): Quantity;
    /** The side of a square with this diagonal, never short. */
    sideOfDiagonal(): Quantity;
    /** Its square root, never short: the side of a square with this area. */
    root(): Quantity;
    /** Rounded up to whole steps. */
    upTo(step: Quantity): Quantity;
    /** Rounded up to what a shop cuts: whole steps of one of these sizes, the one that gives less. */
    upToLeast(sizes: Quantity[]): Quantity;
    /** Rounded to money that can be paid. */
    inCoins(coin: Exact): Quantity;
    /** On a mark of the ruler. */
    onMark(mark: Quantity): Quantity;
    /** The same number, which now shows its value and not its formula. */
    asResult(): Quantity;
    /** The same number as the value of a row. */
    inRow(row: string, entry?: number): Quantity;
    /** Adds the rows it was reckoned from. */
    rowsInto(rows: Set<string>): void;
}
/** The text of an input that is not a number, for a sentence. */
export declare class Stated extends Branded {
    readonly row: string;
    readonly text: string;
    get brand(): 'stated';
    constructor(row: string, text: string);
}
/** A length in inches. */
export declare const inches: (value: Exact | number | string) => Quantity;
/** A count. */
export declare const count: (value: number) => Quantity;
export declare const ONE_WHOLE: Quantity;
/** The sum of all, or a length of 0 if there are none. */
export declare const total: (quantities: Quantity[]) => Quantity;
