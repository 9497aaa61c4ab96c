import { type Purchase } from '../measure/shop.js';
import type { Answer, Cut, Input, Refused } from './answer.js';
import { Book } from './book.js';
import { type Planner } from './planning.js';
import { type CutStrip, type LaidPiece } from './strips.js';
export declare const cuttingFields: {
    price: import("./fields.js").Field<import("fraction.js").default | undefined>;
    shrinkage: import("./fields.js").Field<import("fraction.js").default>;
    increment: import("./fields.js").Field<import("../measure/shop.js").Step>;
    currency: import("./fields.js").Field<string | undefined>;
    mark: import("./fields.js").Field<import("fraction.js").default>;
    seam: import("./fields.js").Field<import("fraction.js").default>;
    oneWay: import("./fields.js").Field<boolean>;
    ruler: import("./fields.js").Field<import("fraction.js").default>;
    mat: import("./fields.js").Field<[import("fraction.js").default, import("fraction.js").default]>;
    fabricWidth: import("./fields.js").Field<import("fraction.js").default>;
    list: import("./fields.js").Field<unknown>;
    sheet: import("./fields.js").Field<string | undefined>;
};
export type CuttingBook = Book<typeof cuttingFields>;
/** Input of {@link reckonCutting}: `list` (rows of cells, or text), `sheet`, `oneWay`, `ruler`, `mat`, `fabricWidth`, … */
export type CuttingInput = Input<typeof cuttingFields> & {
    /** Usable widths of fabrics, by their letters, where they differ from `fabricWidth`. */
    widths?: Record<string, unknown> | undefined;
    /** The width of every other fabric that the list names. Default `fabricWidth`. */
    usualWidth?: unknown;
    /** What the reader should know about this list, in sentences. */
    caution?: unknown;
};
/** One fabric's plan. */
export interface FabricPlan {
    /** Its letter, as the cut list names it. */
    fabric: string;
    /** Exact inches of cloth before rounding; 0 where it is cut from sheets. */
    need: string;
    /** Sheets needed, where it is cut from sheets. */
    sheets?: number;
    buy: Purchase;
    /** What it costs, as a decimal number, where a price was given. */
    cost?: string;
    strips: CutStrip[];
    layout: LaidPiece[];
    pieces: Cut[];
    /** The cloth or sheet, usable: exact inches across, and along what is used. */
    width: string;
    height: string;
    /** The usable width as sold, before a wash. */
    sold?: string;
}
/** What {@link reckonCutting} gives back. */
export interface CuttingResult extends Answer {
    /** Sheets in all, where the list is cut from sheets. */
    sheets?: number;
    /** The first fabric's layout. */
    layout: LaidPiece[];
    fabrics: FabricPlan[];
}
/**
 * Plans a cut list: for each fabric the strips to cut, what comes from each, and the cloth or sheets to buy. Cuts run edge
 * to edge; every plan is checked before it is given back. Impossible inputs give `errors`, never an exception.
 */
export declare const reckonCutting: (input?: CuttingInput, plan?: Planner) => CuttingResult | Refused;
