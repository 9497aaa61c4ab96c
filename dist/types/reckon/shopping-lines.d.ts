import { type Exact } from '../measure/exact.js';
import type { Unwritten } from './answer.js';
import type { Planner } from './planning.js';
import { type Declared, type Group } from './worksheet-parts.js';
import type { ShoppingLine, WorksheetBook } from './worksheet.js';
/** A line of the list, and what it adds to the sums. */
export interface CountedLine {
    line: Unwritten<ShoppingLine>;
    /** Its fabric in words: `Fabric A`, or the part where that names none. */
    text: string;
    /** Undefined where it has no price. */
    paid: Exact | undefined;
    /** The same for whole bolts, where kits are cut. */
    boltCost: Exact | undefined;
}
/** The lines of one fabric: one for each width of cloth that its parts are cut from. */
export declare const linesOf: (book: WorksheetBook, declared: Declared[], { key, letter, parts }: Group, plan: Planner) => CountedLine[];
