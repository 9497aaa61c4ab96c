import { type Exact } from '../measure/exact.js';
import { type Purchase } from '../measure/shop.js';
import type { Answer, Input, Refused } from './answer.js';
import { Book } from './book.js';
import type { FabricPlan } from './cutting.js';
import type { Planner } from './planning.js';
export declare const worksheetFields: {
    width: import("./fields.js").Field<import("fraction.js").default | undefined>;
    length: import("./fields.js").Field<import("fraction.js").default | undefined>;
    fabricWidth: import("./fields.js").Field<import("fraction.js").default | undefined>;
    seam: import("./fields.js").Field<import("fraction.js").default | undefined>;
    kits: import("./fields.js").Field<number | undefined>;
    bolt: {
        write: (inches: Exact, { units, comma }: import("../measure/format.js").Style) => string;
        kind: "length" | "lengths" | "size" | "count" | "percent" | "money" | "flag" | "step" | "text" | "own";
        label: string;
        example?: string;
        lines?: true;
        each?: string | undefined;
        read(raw: unknown, style: import("../measure/format.js").Style): import("fraction.js").default;
        marked?(text: string, unit: import("../measure/units.js").Units): string;
        hint?: string;
        more?: true;
        initial?: string | Record<import("../measure/units.js").Units, string>;
        optional?: true;
    } | {
        write: (inches: Exact, { units, comma }: import("../measure/format.js").Style) => string;
        options: Record<string, string>;
        kind: "length" | "lengths" | "size" | "count" | "percent" | "money" | "flag" | "step" | "text" | "own";
        label: string;
        example?: string;
        lines?: true;
        each?: string | undefined;
        read(raw: unknown, style: import("../measure/format.js").Style): import("fraction.js").default;
        marked?(text: string, unit: import("../measure/units.js").Units): string;
        hint?: string;
        more?: true;
        initial?: string | Record<import("../measure/units.js").Units, string>;
        optional?: true;
    };
    shrinkage: import("./fields.js").Field<import("fraction.js").default>;
    increment: import("./fields.js").Field<import("../measure/shop.js").Step>;
    currency: import("./fields.js").Field<string | undefined>;
};
export type WorksheetBook = Book<typeof worksheetFields>;
/** A fabric as the page declares it. */
export interface FabricInput {
    letter: string;
    name?: string | undefined;
    /** Of one yard or metre. */
    price?: unknown;
    /** Its usable width, for a note where it cannot be read; parts say themselves how wide their cloth is. */
    fabricWidth?: unknown;
}
/**
 * What one part of the quilt takes from one fabric. Its lengths are those of a calculator's result: exact inches, whatever
 * the worksheet's `units` are.
 */
export interface PartInput {
    /** `Binding`, `Borders` … */
    title: string;
    /** The fabric's letter; empty where the part names none. */
    fabric: string;
    /** Exact inches of cloth, before rounding. */
    need: string;
    /** The cloth's usable width it was reckoned with, exact inches. */
    width?: string;
    /** The same as sold, where a wash leaves less of it. Default `width`. */
    sold?: string;
    /** What is cut from it, for planning several parts together; absent where a part has to be cut on its own. */
    pieces?: {
        piece?: string;
        width: string;
        length: string;
        count: number;
        turn: boolean;
    }[];
    /** Inches bought for one inch of washed cloth. Default 1. */
    washed?: string;
    /** Where its fabric has none: of one `per`. */
    price?: unknown;
    /** `yd` or `m`: what its price is of. Default: what the worksheet's fabrics are priced by. */
    per?: string;
}
/** Something bought by the piece: a package of batting, fat quarters. */
export interface ItemInput {
    title: string;
    /** The letter of the fabric it is of, where it is cloth. */
    fabric?: string | undefined;
    /** What to buy: `5 fat quarters`. */
    text: string;
    /** A decimal number, with its currency or without. */
    cost?: string | undefined;
}
/** Input of {@link reckonWorksheet}. */
export type WorksheetInput = Input<typeof worksheetFields> & {
    fabrics?: FabricInput[];
    parts?: PartInput[];
    items?: ItemInput[];
    /** What is wrong elsewhere on the worksheet, in sentences. */
    troubles?: string[];
    /** What is not on the list yet, in sentences. */
    unfinished?: string[];
    /** Letters that parts name, whether or not anything is cut from them. */
    named?: string[];
};
/** An amount of money: a decimal number, and as people write it. */
export type Money = NonNullable<Answer['cost']>;
/** One fabric, in one width, on the shopping list. Lengths are exact inches. */
export interface ShoppingLine {
    /** Empty for a part that names no fabric. */
    letter: string;
    name: string;
    /** What it is for, each with its own need. */
    parts: {
        title: string;
        need: string;
    }[];
    /** Before rounding, all parts together. */
    need: string;
    /** What planning the parts together saves. */
    saved: string;
    buy: Purchase;
    /** What to buy in words: `3 3/4 yd`, with its width where that is not the usual one. */
    text: string;
    /** The cloth's usable width as sold; absent where no part says it. */
    width?: string;
    /** Exact inches bought beyond the need. */
    spare: string;
    /** The two lengths to buy, where they come to less than one, each for the parts of these titles. `buy` is both. */
    lengths?: {
        parts: string[];
        need: string;
        buy: Purchase;
    }[];
    price?: Money;
    cost?: Money;
    /** Where kits are cut: bolts needed; with what one kit buys in one length, fewer would not do. */
    bolts?: number;
    /** How to cut the parts from one length, where that saves cloth; otherwise each is cut as it says itself. */
    together?: FabricPlan;
}
/** What {@link reckonWorksheet} gives back. */
export interface WorksheetResult extends Answer {
    fabrics: ShoppingLine[];
    items: {
        title: string;
        fabric: string;
        name: string;
        text: string;
        cost?: Money;
    }[];
    /** All costs together, where there are prices. */
    total?: Money;
    /** More will be to pay: something has no price, or is not on the list. `notes` name it. */
    soFar?: boolean;
    /** What one kit comes to, and the whole bolts and the items for all of them. */
    kits?: {
        count: number;
        each?: Money;
        cost?: Money;
    };
}
/**
 * One shopping list from all the parts of a quilt: each fabric's parts are added before they are rounded, and planned
 * together where that saves cloth; with prices, and with bolts where kits are cut. A part whose fabric was not declared
 * still gets its line.
 */
export declare const reckonWorksheet: (input?: WorksheetInput, plan?: Planner) => WorksheetResult | Refused;
