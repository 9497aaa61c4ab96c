import { type Purchase } from '../measure/shop.js';
import { type Answer, type Cut, type Input, type Refused } from './book.js';
export declare const topFields: {
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
    readonly seam: {
        readonly kind: "length";
        readonly label: "Seam allowance";
        readonly initial: "1/4 in";
        readonly zero: true;
        readonly most: "2 in";
        readonly more: true;
    };
    readonly fabricWidth: {
        readonly kind: "length";
        readonly label: "Usable width of the cloth";
        readonly initial: "40 in";
        readonly hint: "selvages off; measure yours";
    };
    readonly block: {
        readonly kind: "length";
        readonly label: "Block, finished";
        readonly most: "200 in";
    };
    readonly across: {
        readonly kind: "count";
        readonly label: "Blocks across";
        readonly most: 100;
    };
    readonly down: {
        readonly kind: "count";
        readonly label: "Blocks down";
        readonly most: 100;
    };
    readonly set: {
        readonly kind: "choice";
        readonly label: "Set";
        readonly initial: "straight";
        readonly options: {
            readonly straight: "straight";
            readonly 'on-point': "on point";
        };
    };
    readonly sashing: {
        readonly kind: "length";
        readonly label: "Sashing, finished";
        readonly initial: "0";
        readonly zero: true;
        readonly most: "60 in";
        readonly hint: "0 for none";
    };
    readonly cornerstones: {
        readonly kind: "flag";
        readonly label: "Cornerstones";
    };
    readonly frame: {
        readonly kind: "flag";
        readonly label: "Sashing round the outside";
    };
};
/** Input of {@link reckonTop}: `block`, `across`, `down`, `sashing`, `cornerstones`, `frame`, `set`, … */
export type TopInput = Input<typeof topFields>;
/** What {@link reckonTop} gives back. Lengths are exact inches. */
export interface TopResult extends Answer {
    finished: {
        width: string;
        length: string;
    };
    /** With its seam allowance all round. */
    unfinished: {
        width: string;
        length: string;
    };
    blocks: number;
    /** Sashing and cornerstones: cut sizes and counts. */
    pieces: Cut[];
    /** Side triangles on point: how many, and the square that four are cut from. */
    sideTriangles?: number;
    sideSquare?: string;
    /** The square that two corner triangles are cut from. */
    cornerSquare?: string;
    /** Cloth for each kind of piece, each rounded by itself. */
    parts: {
        part: string;
        fabric: string;
        buy: Purchase;
        cuts: Cut[];
    }[];
}
/**
 * A top's size from its blocks, with every sashing piece, cornerstone and setting triangle. On point, sashing runs round
 * every block, with cornerstones. `buy` is the cloth for sashing, cornerstones and setting triangles from one cloth;
 * the blocks' own patches are a cut list's matter.
 */
export declare const reckonTop: (input?: TopInput) => TopResult | Refused;
