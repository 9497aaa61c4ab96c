import type { Answer } from '../ledger/answer.js';
import type { Ledger } from '../ledger/ledger.js';
import type { Cut, Money, Purchase } from '../ledger/purchase.js';
import type { LaidPlan } from '../ledger/strips.js';
import type { Exact } from '../measure/exact.js';
import type { Message } from '../measure/message.js';
export declare const worksheetFields: {
    width: import("../ledger/field.js").Field<import("fraction.js").default | undefined>;
    length: import("../ledger/field.js").Field<import("fraction.js").default | undefined>;
    fabricWidth: import("../ledger/field.js").Field<import("fraction.js").default | undefined>;
    seam: import("../ledger/field.js").Field<import("fraction.js").default | undefined>;
    kits: import("../ledger/field.js").Field<number | undefined>;
    bolt: {
        write: (inches: Exact, { units, comma }: import("../measure/format.js").Style) => string;
        kind: import("../ledger/field.js").FieldKind;
        example?: import("../ledger/field.js").Example | Record<import("../measure/units.js").Units, import("../ledger/field.js").Example>;
        lines?: true;
        each?: true | undefined;
        options?: readonly string[];
        read(raw: unknown, style: import("../measure/format.js").Style, what: import("../ledger/field.js").Label): import("fraction.js").default;
        marked?(text: string, unit: import("../measure/units.js").Units): string;
        more?: true;
        initial?: string | Record<import("../measure/units.js").Units, string>;
        optional?: true;
        offered?: Record<import("../measure/units.js").Units, readonly string[]>;
    };
    shrinkage: import("../ledger/field.js").Field<import("fraction.js").default>;
    increment: import("../ledger/field.js").Field<import("../measure/shop.js").Step>;
    currency: import("../ledger/field.js").Field<string | undefined>;
};
/** The rows that it reckons: of each line what it needs, what to buy and how many bolts, and what all comes to. */
export type WorksheetRow = `need-${string}` | `buy-${string}` | `bolts-${string}` | 'total' | 'kitCost';
export type WorksheetLedger = Ledger<typeof worksheetFields, WorksheetRow>;
/** Parts that are cut from one length together. */
export interface PlannedTogether extends LaidPlan {
    /** The fabric's letter. */
    fabric: string;
    need: Exact;
    buy: Purchase;
    pieces: Cut[];
}
/** One fabric, in one width, on the shopping list. Lengths are exact inches. */
export interface ShoppingLine {
    /** Empty for a part that names no fabric. */
    letter: string;
    name: string;
    /** What it is for, each with its own need. */
    parts: {
        title: Message;
        need: Exact;
    }[];
    /** Before rounding, all parts together. */
    need: Exact;
    /** What planning the parts together saves. */
    saved: Exact;
    buy: Purchase;
    /** What to buy in words: `3 3/4 yd`, with its width where that is not the usual one. */
    text: Message;
    /** The cloth's usable width as sold; absent where no part says it. */
    width?: Exact | undefined;
    /** Exact inches bought beyond the need. */
    spare: Exact;
    /** The two lengths to buy, where they come to less than one, each for the parts of these titles. `buy` is both. */
    lengths?: {
        parts: Message[];
        need: Exact;
        buy: Purchase;
    }[] | undefined;
    price?: Money | undefined;
    cost?: Money | undefined;
    /** Where kits are cut: bolts needed; with what one kit buys in one length, fewer would not do. */
    bolts?: number | undefined;
    /** How to cut the parts from one length, where that saves cloth; otherwise each is cut as it says itself. */
    together?: PlannedTogether | undefined;
}
/** Something bought by the piece, on the shopping list. */
export interface ShoppingItem {
    title: Message;
    /** The letter and the name of the fabric it is of; empty where it is no cloth. */
    fabric: string;
    name: string;
    /** What to buy: `5 fat quarters`. */
    text: Message;
    cost?: Money | undefined;
    /** The same as an amount, where it is known as one. */
    used: {
        buy: Purchase | undefined;
    };
}
/** What everything comes to. */
export interface Sums {
    /** All costs together, where there are prices. */
    total?: Money | undefined;
    /** More will be to pay: something has no price, or is not on the list. `notes` name it. */
    soFar?: boolean | undefined;
    /** What one kit comes to, and the whole bolts and the items for all of them. */
    kits?: {
        count: number;
        each?: Money | undefined;
        cost?: Money | undefined;
    } | undefined;
}
/** What {@link reckonWorksheet} gives back. */
export interface WorksheetAnswer extends Answer, Sums {
    fabrics: ShoppingLine[];
    items: ShoppingItem[];
}
