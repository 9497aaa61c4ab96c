import type { Purchase } from '../measure/shop.js';
import type { Answer, Cut, Input, Refused } from './answer.js';
import { type Planner } from './planning.js';
import { type CutStrip } from './strips.js';
import { type OwnCloth } from './widths.js';
export declare const topFields: {
    shrinkage: import("./fields.js").Field<import("fraction.js").default>;
    increment: import("./fields.js").Field<import("../measure/shop.js").Step>;
    price: import("./fields.js").Field<import("fraction.js").default | undefined>;
    currency: import("./fields.js").Field<string | undefined>;
    mark: import("./fields.js").Field<import("fraction.js").default>;
    seam: import("./fields.js").Field<import("fraction.js").default>;
    fabricWidth: import("./fields.js").Field<import("fraction.js").default>;
    block: import("./fields.js").Field<import("fraction.js").default>;
    across: import("./fields.js").Field<number>;
    down: import("./fields.js").Field<number>;
    set: import("./fields.js").Field<string>;
    sashing: import("./fields.js").Field<import("fraction.js").default>;
    cornerstones: import("./fields.js").Field<boolean>;
    frame: import("./fields.js").Field<boolean>;
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
    /** Cloth for each kind of piece, each rounded by itself, and the strips it is cut in. */
    parts: {
        part: string;
        fabric: string;
        buy: Purchase;
        cloth: OwnCloth;
        cuts: Cut[];
        strips: CutStrip[];
    }[];
    /** The strips where all are cut from one cloth. */
    strips: CutStrip[];
}
/**
 * A top's size from its blocks, with every sashing piece, cornerstone and setting triangle. On point, sashing runs round
 * every block, with cornerstones. `buy` is the cloth for sashing, cornerstones and setting triangles from one cloth;
 * the blocks' own patches are a cut list's matter. While a planner is at work the cloth is what strips of each kind take.
 */
export declare const reckonTop: (input?: TopInput, plan?: Planner) => TopResult | Refused;
