import { Message } from '../measure/message.js';
import type { Money, Purchase } from './purchase.js';
import { Quantity } from './quantity.js';
/** What a row of the sheet holds. */
export type RowValue = Quantity | Purchase | Money | Message;
/** A reckoned row: its value, how it was got, and where it came from. */
export declare class ReckonedRow {
    readonly id: string;
    value: RowValue;
    /** A formula or a reason. */
    readonly how: Quantity | Message;
    /** Its name, if its id is not enough: `Border 2, sides`. */
    readonly label: Message | undefined;
    /** Rows that it comes from, besides those in its formula or its reason. */
    readonly also: readonly string[];
    /** A formula for a value that is not a quantity: the length of what is bought, the sum of money, the number in words. */
    readonly formula?: Quantity | undefined;
    role: 'reckoned' | 'measurable' | 'measured';
    /** For a measured row: the value that was reckoned. */
    reckoned: Quantity | undefined;
    constructor(id: string, value: RowValue, 
    /** A formula or a reason. */
    how: Quantity | Message, 
    /** Its name, if its id is not enough: `Border 2, sides`. */
    label: Message | undefined, 
    /** Rows that it comes from, besides those in its formula or its reason. */
    also: readonly string[], 
    /** A formula for a value that is not a quantity: the length of what is bought, the sum of money, the number in words. */
    formula?: Quantity | undefined);
    /** The ids of the rows it was reckoned from. */
    get from(): string[];
}
/** The row of an input, with the value that somebody gave or the initial one. */
export interface GivenRow {
    role: 'given';
    /** The input's key. */
    id: string;
    /** The value, or undefined if the text cannot be read. */
    value: unknown;
    /** What somebody wrote, or the initial value. */
    written: unknown;
}
export type Row = GivenRow | ReckonedRow;
