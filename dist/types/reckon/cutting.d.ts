import { type Cloth, type CutPiece, type CuttingPlan } from '../cutting/plan.js';
import type { NoPlan } from '../cutting/grid.js';
import { type Purchase } from '../measure/shop.js';
import { type Answer, type Cut, type Input, type Refused } from './book.js';
export declare const cuttingFields: {
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
    readonly price: {
        readonly kind: "money";
        readonly label: "Price of a yard or metre";
        readonly optional: true;
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
    readonly mark: {
        readonly kind: "mark";
        readonly label: "Cut to marks of";
        readonly initial: {
            readonly in: "1/8 in";
            readonly cm: "1 mm";
        };
        readonly more: true;
    };
    readonly oneWay: {
        readonly kind: "flag";
        readonly label: "One-way print";
    };
    readonly ruler: {
        readonly kind: "length";
        readonly label: "Ruler, length";
        readonly initial: "24 in";
        readonly most: "120 in";
        readonly more: true;
    };
    readonly mat: {
        readonly kind: "size";
        readonly label: "Cutting mat";
        readonly initial: "24 x 36";
        readonly more: true;
    };
    readonly fabricWidth: {
        readonly kind: "length";
        readonly label: "Usable width of the cloth";
        readonly initial: "40 in";
        readonly hint: "selvages off; measure yours";
    };
    readonly list: {
        readonly kind: "own";
        readonly label: "Cut list";
        readonly lines: true;
        readonly read: (raw: unknown) => unknown;
        readonly write: (list: unknown) => string;
        readonly hint: "fabric | piece | cut size | how many; a line each";
    };
    readonly sheet: {
        readonly kind: "text";
        readonly label: "Cut from";
        readonly optional: true;
        readonly hint: "empty for cloth by length; fat-quarter, fat-eighth, or a size like 18 x 20";
    };
};
/** Input of {@link reckonCutting}: `list` (rows of cells, or text), `sheet`, `oneWay`, `ruler`, `mat`, `fabricWidth`, … */
export type CuttingInput = Input<typeof cuttingFields>;
/** Where one piece lies. Exact inches from the left and the top of its cloth or sheet. */
export interface LaidPiece {
    x: string;
    y: string;
    width: string;
    height: string;
    /** The piece's name in the cut list. */
    piece: string;
    /** The sheet it lies on, from 0. */
    sheet: number;
}
/** Strips cut alike across the cloth, and what each gives. */
export interface CutStrip {
    count: number;
    height: string;
    gives: {
        piece: string;
        count: number;
    }[];
}
/** One fabric's plan. */
export interface FabricPlan {
    /** Its letter, as the cut list names it. */
    fabric: string;
    /** Exact inches of cloth before rounding; 0 where it is cut from sheets. */
    need: string;
    /** Sheets needed, where it is cut from sheets. */
    sheets?: number;
    buy: Purchase;
    strips: CutStrip[];
    layout: LaidPiece[];
    pieces: Cut[];
    /** The cloth or sheet, usable: exact inches across, and along what is used. */
    width: string;
    height: string;
}
/** What {@link reckonCutting} gives back. */
export interface CuttingResult extends Answer {
    /** Sheets in all, where the list is cut from sheets. */
    sheets?: number;
    /** The first fabric's layout. */
    layout: LaidPiece[];
    fabrics: FabricPlan[];
}
/** Plans pieces on cloth; an element gives one that plans without holding up the page. */
export type Planner = (pieces: CutPiece[], cloth: Cloth) => CuttingPlan | NoPlan;
/**
 * Plans a cut list: for each fabric the strips to cut, what comes from each, and the cloth or sheets to buy. Cuts run edge
 * to edge; every plan is checked before it is given back. Impossible inputs give `errors`, never an exception.
 */
export declare const reckonCutting: (input?: CuttingInput, plan?: Planner) => CuttingResult | Refused;
