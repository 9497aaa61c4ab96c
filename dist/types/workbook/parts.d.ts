import type { Message } from '../measure/message.js';
import type { WorkbookFabric, WorkbookPart } from './input.js';
import { type WorksheetLedger } from './shape.js';
/** A fabric's letter, with one space wherever there are several. */
export declare const letterOf: (written: unknown) => string;
/** A fabric that parts may name. */
export interface Declared {
    letter: string;
    name: string;
    /** As it was written. */
    price: unknown;
}
/** The fabrics that the page declares; of two with one letter the first. */
export declare const readFabrics: (ledger: WorksheetLedger, fabrics: WorkbookFabric[]) => Declared[];
/** All that is cut from one fabric. */
export interface Group {
    /** Tells its rows from those of others. */
    key: string;
    letter: string;
    parts: WorkbookPart[];
}
/** The parts of each fabric; one that names none is a group of its own, since its cloth may be any. */
export declare const groupsOf: (declared: Declared[], parts: WorkbookPart[]) => Group[];
/** Parts that are cut from cloth of one width; one that does not say its width goes with the first. */
export declare const byWidth: (parts: WorkbookPart[]) => WorkbookPart[][];
export declare const titlesOf: (parts: Pick<WorkbookPart, "title">[]) => Message[];
