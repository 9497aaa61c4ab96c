import type { Message } from '../measure/message.js';
import { type AtHand } from './at-hand.js';
import type { WorkbookFabric, WorkbookPart } from './input.js';
import { Stock } from './own-cloth.js';
import { type WorksheetLedger } from './shape.js';
/** The letter of a fabric, with single spaces in it. */
export declare const letterOf: (written: unknown) => string;
/** A fabric that parts may name. */
export interface Declared {
    letter: string;
    name: string;
    /** As it was written: of a yard or a metre, or of one of its sheets. */
    price: unknown;
    /** What it is bought in, if that is not cloth by length. */
    sheet: string;
    /** What the reader has of it, and the rest of that while the lines of the list are made. Undefined if nobody asks. */
    atHand: AtHand[] | undefined;
    stock: Stock | undefined;
}
/** The fabrics that the page declares. If two have the same letter, the first one counts. */
export declare const readFabrics: (ledger: WorksheetLedger, fabrics: WorkbookFabric[]) => Declared[];
/** All that is cut from one fabric. */
export interface Group {
    /** Part of its row ids, so that they differ from those of other fabrics. */
    key: string;
    letter: string;
    parts: WorkbookPart[];
}
/** The parts of each fabric. A part that names no fabric is its own group, since its cloth may be any. */
export declare const groupsOf: (declared: Declared[], parts: WorkbookPart[]) => Group[];
/** The parts that are cut from cloth of one width. Parts without a width go with the first width. */
export declare const byWidth: (parts: WorkbookPart[]) => WorkbookPart[][];
export declare const titlesOf: (parts: Pick<WorkbookPart, "title">[]) => Message[];
