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
    /** What it is called, where its id does not say it all: `Border 2, sides`. */
    readonly label: Message | undefined;
    /** Rows that count beside those in its formula or its reason. */
    readonly also: readonly string[];
    /** Its value as a formula, where that is no quantity: of what is bought the length, of money its sum, of words the number in them. */
    readonly formula?: Quantity | undefined;
    role: 'reckoned' | 'measurable' | 'measured';
    /** Of a measured row, what was reckoned there. */
    reckoned: Quantity | undefined;
    constructor(id: string, value: RowValue, 
    /** A formula or a reason. */
    how: Quantity | Message, 
    /** What it is called, where its id does not say it all: `Border 2, sides`. */
    label: Message | undefined, 
    /** Rows that count beside those in its formula or its reason. */
    also: readonly string[], 
    /** Its value as a formula, where that is no quantity: of what is bought the length, of money its sum, of words the number in them. */
    formula?: Quantity | undefined);
    /** The ids of the rows it was reckoned from. */
    get from(): string[];
}
/** The row of an input, as it was given or as it stands where nothing was. */
export interface GivenRow {
    role: 'given';
    /** The input's key. */
    id: string;
    /** What was read; undefined where nothing can be. */
    value: unknown;
    /** What was written, or stands there at first. */
    written: unknown;
}
export type Row = GivenRow | ReckonedRow;
