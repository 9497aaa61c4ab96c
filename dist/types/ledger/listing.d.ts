import type { Exact } from '../measure/exact.js';
import { type Message } from '../measure/message.js';
import type { Money, Purchase } from './purchase.js';
/** What columns of many lists are headed. */
export interface ListSayings {
    clothHead: undefined;
    buyHead: undefined;
}
/** A cell of a list: an exact number is a length, a plain one a count, a text a person's own words. */
export type ListCell = Exact | Message | Purchase | Money | number | string | undefined;
/** A table under the drawing: other ways to do it, or what a shop has. */
export interface Listing {
    caption: Message;
    head?: Message[];
    rows: ListCell[][];
    /** It says how to cut, and is printed on a worksheet too; only there, where the rows say it already. */
    toCut?: true | 'paper';
}
export declare const sayInList: <Code extends "clothHead" | "buyHead">(code: Code, ...[values]: ListSayings[Code] extends undefined ? [] : [values: ListSayings[Code]]) => Message<Code>;
