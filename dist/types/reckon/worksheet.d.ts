import { type Purchase } from '../measure/shop.js';
import { type Answer, type Input, type Refused } from './book.js';
import type { Planner } from './cutting.js';
export declare const worksheetFields: {
    readonly width: {
        readonly optional: true;
        readonly more: true;
        readonly hint: "where there is no quilt top to reckon it from";
        readonly kind: "length";
        readonly label: "Quilt width";
    };
    readonly length: {
        readonly optional: true;
        readonly more: true;
        readonly hint: "where there is no quilt top to reckon it from";
        readonly kind: "length";
        readonly label: "Quilt length";
    };
    readonly fabricWidth: {
        readonly kind: "length";
        readonly label: "Usable width of the cloth";
        readonly optional: true;
        readonly more: true;
        readonly hint: "of every fabric that does not say its own";
    };
    readonly seam: {
        readonly kind: "length";
        readonly label: "Seam allowance";
        readonly optional: true;
        readonly zero: true;
        readonly most: "2 in";
        readonly more: true;
    };
    readonly kits: {
        readonly kind: "count";
        readonly label: "Kits";
        readonly optional: true;
        readonly most: 10000;
        readonly hint: "for a shop: how many kits to cut";
    };
    readonly bolt: {
        readonly kind: "length";
        readonly label: "Cloth on a bolt";
        readonly initial: "15 yd";
        readonly most: "10000 in";
        readonly hint: "a kit’s cloth is never pieced from two bolts";
    };
    readonly shrinkage: {
        readonly kind: "percent";
        readonly label: "Shrinkage";
        readonly initial: "0";
        readonly hint: "cotton about 3 % when prewashed";
        readonly more: true;
    };
    readonly increment: {
        readonly kind: "step";
        readonly label: "The shop cuts by";
        readonly initial: {
            readonly in: "1/8 yd";
            readonly cm: "10 cm";
        };
        readonly more: true;
    };
    readonly currency: {
        readonly kind: "text";
        readonly label: "Currency";
        readonly optional: true;
        readonly more: true;
        readonly pattern: RegExp;
        readonly example: "EUR";
    };
};
/** A fabric as the page declares it. */
export interface FabricInput {
    letter: string;
    name?: string | undefined;
    fabricWidth?: unknown;
    /** Of one yard or metre. */
    price?: unknown;
}
/** What one part of the quilt takes from one fabric. */
export interface PartInput {
    /** `Binding`, `Borders` … */
    title: string;
    /** The fabric's letter; empty where the part names none. */
    fabric: string;
    /** Exact inches of cloth, before rounding. */
    need: string;
    /** The cloth's usable width it was reckoned with, exact inches. */
    width: string;
    /** What is cut from it, for planning several parts together; absent where a part is not cut in pieces. */
    pieces?: {
        width: string;
        length: string;
        count: number;
        turn: boolean;
    }[];
    /** Inches bought for one inch of washed cloth. */
    washed?: string;
}
/** Something bought by the piece: a package of batting, fat quarters. */
export interface ItemInput {
    title: string;
    text: string;
    cost?: string | undefined;
}
/** Input of {@link reckonWorksheet}. */
export type WorksheetInput = Input<typeof worksheetFields> & {
    fabrics?: FabricInput[];
    parts?: PartInput[];
    items?: ItemInput[];
    /** What is wrong elsewhere on the worksheet. */
    troubles?: string[];
};
/** One fabric on the shopping list. Lengths are exact inches. */
export interface ShoppingLine {
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
    price?: string;
    cost?: string;
    /** Where kits are cut: bolts needed, and no fewer would do. */
    bolts?: number;
}
/** What {@link reckonWorksheet} gives back. */
export interface WorksheetResult extends Answer {
    fabrics: ShoppingLine[];
    items: ItemInput[];
    /** All costs together, where there are prices. */
    total?: string;
    kits?: {
        count: number;
        costEach: string;
        cost: string;
    };
}
/**
 * One shopping list from all the parts of a quilt: each fabric's parts are added before they are rounded, and planned
 * together where that saves cloth; with prices, and with bolts where kits are cut. A part whose fabric was not declared
 * still gets its line.
 */
export declare const reckonWorksheet: (input?: WorksheetInput, plan?: Planner) => WorksheetResult | Refused;
