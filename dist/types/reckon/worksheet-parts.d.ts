import type { CutPiece } from '../cutting/plan.js';
import { type Exact } from '../measure/exact.js';
import type { FabricInput, ItemInput, PartInput, WorksheetBook, WorksheetInput } from './worksheet.js';
export declare const sentences: (list: unknown) => string[];
/** The price of this, where one was given that can be read. */
export declare const priceOf: (book: WorksheetBook, written: unknown, what: string) => Exact | undefined;
/** Lets a currency that any price names hold for all, where none is given. */
export declare const adoptCurrency: (book: WorksheetBook, { fabrics, parts, items }: WorksheetInput) => void;
/** A fabric's letter, with one space wherever there are several. */
export declare const letterOf: (written: unknown) => string;
/** A fabric that parts may name. */
export interface Declared {
    letter: string;
    name: string;
    price: unknown;
}
/** The fabrics that the page declares; of two with one letter the first. */
export declare const readFabrics: (book: WorksheetBook, fabrics: FabricInput[] | undefined) => Declared[];
/** Something bought by the piece. */
export interface Item {
    title: string;
    /** The letter and the name of the fabric it is of; empty where it is no cloth. */
    fabric: string;
    name: string;
    text: string;
    price: unknown;
}
export declare const readItems: (items: ItemInput[] | undefined, declared: Declared[]) => Item[];
/** What one part takes from its fabric. */
export interface Part {
    title: string;
    need: Exact;
    width: Exact;
    sold: Exact;
    washed: Exact;
    price: unknown;
    /** The cloth that its price is of; undefined where that is the worksheet's own unit. */
    per: Exact | undefined;
    /** Their names in `names`. */
    pieces: CutPiece[];
    names: string[];
}
/** All that is cut from one fabric. */
export interface Group {
    /** Tells its rows from those of others. */
    key: string;
    letter: string;
    parts: Part[];
}
/** The parts of each fabric; one that names none is a group of its own, since its cloth may be any. */
export declare const groupsOf: (book: WorksheetBook, declared: Declared[], parts: PartInput[] | undefined) => Group[];
/** Parts that are cut from cloth of one width; one that does not say its width goes with the first. */
export declare const byWidth: (parts: Part[]) => Part[][];
