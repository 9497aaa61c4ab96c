import { Branded } from '../measure/brand.js';
import type { Exact } from '../measure/exact.js';
import { type Message } from '../measure/message.js';
import type { Money, Purchase } from './purchase.js';
/** The heads of columns that many lists have. */
export interface ListSayings {
    clothHead: undefined;
    buyHead: undefined;
}
/** A cell in which the reader writes. */
export declare class Entry extends Branded {
    /** What it is about. */
    readonly key: string;
    readonly text: string;
    /** Its name. */
    readonly called: Message;
    get brand(): 'entry';
    constructor(
    /** What it is about. */
    key: string, text: string, 
    /** Its name. */
    called: Message);
}
/** A cell of a list. An exact number is a length, a plain number is a count, and a text is somebody's own words. */
export type ListCell = Exact | Message | Purchase | Money | Entry | number | string | undefined;
/** A table under the drawing, such as other layouts or the packages of a shop. */
export interface Listing {
    caption: Message;
    head?: Message[];
    rows: ListCell[][];
    /** It says how to cut, so a worksheet prints it too. `paper`: only there, because the rows on the page say it already. */
    toCut?: true | 'paper';
}
export declare const sayInList: <Code extends "clothHead" | "buyHead">(code: Code, ...[values]: ListSayings[Code] extends undefined ? [] : [values: ListSayings[Code]]) => Message<Code>;
