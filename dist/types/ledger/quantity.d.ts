import { Branded } from '../measure/brand.js';
import { type Exact } from '../measure/exact.js';
/** What a number is: this decides how it is shown, and what it may be added to. */
export type Kind = 'length' | 'count' | 'number' | 'percent' | 'money';
/**
 * How a number was got from others. `row` is another row of the sheet and `number` a number written as it is; `result` shows
 * only its number, though it knows how it was got; `up` is rounded up to whole steps, `step` to whole ones of the size, among
 * several, that comes to least, `mark` to a mark of the ruler, and `coin` to the nearest coin.
 */
export type Operation = 'number' | 'row' | '+' | '−' | '×' | '÷' | '×√2' | '÷√2' | '√' | 'up' | 'step' | 'mark' | 'coin' | 'result';
/**
 * A number that knows how it was got: its exact value, and the operation and the quantities that it was reckoned with. It is
 * reckoned once, by the same call that writes its formula down, so that a number and its working cannot differ.
 */
export declare class Quantity extends Branded {
    #private;
    readonly value: Exact;
    readonly kind: Kind;
    readonly operation: Operation;
    readonly parts: readonly Quantity[];
    /** Of a `row`: its id, and which entry, where the row holds a list. */
    readonly row: string;
    readonly entry: number;
    get brand(): 'quantity';
    constructor(value: Exact, kind: Kind, operation?: Operation, parts?: readonly Quantity[], 
    /** Of a `row`: its id, and which entry, where the row holds a list. */
    row?: string, entry?: number);
    plus(other: Quantity): Quantity;
    minus(other: Quantity): Quantity;
    /** So many of it, `2 × 4`, or a part of it, `40 × (1 − 3 %)`. */
    times(other: Quantity | number): Quantity;
    over(other: Quantity | number): Quantity;
    /** What is left of it after so many percent are lost: `× (1 − 3 %)`. */
    lessPercent(percent: Quantity): Quantity;
    /** What so many percent are lost of, where this is what is left: `÷ (1 − 3 %)`. */
    beforeLoss(percent: Quantity): Quantity;
    /** The diagonal of a square with this side, never short. */
    diagonal(): Quantity;
    /** The side of a square with this diagonal, never short. */
    sideOfDiagonal(): Quantity;
    /** Its square root, never short: the side of a square with this area. */
    root(): Quantity;
    /** Rounded up to whole steps. */
    upTo(step: Quantity): Quantity;
    /** Rounded up to what a shop cuts: whole steps of one of these sizes, whichever is less. */
    upToLeast(sizes: Quantity[]): Quantity;
    /** So much money as can be paid. */
    inCoins(coin: Exact): Quantity;
    /** On a mark of the ruler. */
    onMark(mark: Quantity): Quantity;
    /** The same number, shown as a number and not by its formula. */
    asResult(): Quantity;
    /** The same number as a row of the sheet holds it. */
    inRow(row: string, entry?: number): Quantity;
    /** Adds the rows it was reckoned from. */
    rowsInto(rows: Set<string>): void;
}
/** An input that is no number, as a sentence shows it: what stands in its row. */
export declare class Stated extends Branded {
    readonly row: string;
    readonly text: string;
    get brand(): 'stated';
    constructor(row: string, text: string);
}
/** A length of so many inches. */
export declare const inches: (value: Exact | number | string) => Quantity;
/** So many of something. */
export declare const count: (value: number) => Quantity;
export declare const ONE_WHOLE: Quantity;
/** All of them added; nothing, as a length, where there are none. */
export declare const total: (quantities: Quantity[]) => Quantity;
