import type { Purchase } from '../measure/shop.js';
import type { Answer, Input, Refused } from './answer.js';
import { type BorderPlan } from './border-strips.js';
import { type OwnCloth } from './widths.js';
export declare const bordersFields: {
    shrinkage: import("./fields.js").Field<import("fraction.js").default>;
    increment: import("./fields.js").Field<import("../measure/shop.js").Step>;
    price: import("./fields.js").Field<import("fraction.js").default | undefined>;
    currency: import("./fields.js").Field<string | undefined>;
    mark: import("./fields.js").Field<import("fraction.js").default>;
    grain: import("./fields.js").Field<string>;
    join: import("./fields.js").Field<string>;
    seam: import("./fields.js").Field<import("fraction.js").default>;
    fabricWidth: import("./fields.js").Field<import("fraction.js").default>;
    width: import("./fields.js").Field<import("fraction.js").default>;
    length: import("./fields.js").Field<import("fraction.js").default>;
    borders: import("./fields.js").Field<import("fraction.js").default[] | undefined>;
    corners: import("./fields.js").Field<string[]>;
    target: import("./fields.js").Field<[import("fraction.js").default, import("fraction.js").default] | undefined>;
};
/** Input of {@link reckonBorders}: `width`, `length`, `borders`, `target`, `corners`, `grain`, `join`, `fabricWidth`, … */
export type BordersInput = Input<typeof bordersFields>;
/** Equal pieces of one border: its sides, its top and bottom (`end`), or its corner squares. */
export interface BorderPiece {
    piece: 'side' | 'end' | 'corner';
    count: number;
    /** Cut sizes, exact inches; the cut list has them on the ruler's marks. */
    length: string;
    width: string;
}
/** One border. Lengths are exact inches. */
export interface Border extends BorderPlan {
    /** Its finished width; at the sides, where top and bottom differ. */
    finished: string;
    /** Its finished width at top and bottom, where that differs. */
    finishedEnds?: string;
    corners: string;
    pieces: BorderPiece[];
    /** What it is cut from. */
    cloth: OwnCloth;
    /** What to buy where this border has a cloth of its own. */
    buy: Purchase;
    /** Every plan that the cloth allows: across joined, across separate, along. The border has the best of them. */
    plans: (BorderPlan & {
        buy: Purchase;
    })[];
}
/** What {@link reckonBorders} gives back; `fabric` and `buy` are for all borders from one cloth. */
export interface BordersResult extends Answer {
    /** From the inside out. */
    borders: Border[];
    /** The top's size with its borders. */
    finished: {
        width: string;
        length: string;
    };
}
/**
 * Borders round a top: what to cut for each, from how many strips, the cloth for all of them, and the finished size. A
 * length typed over a reckoned one changes all that follows. Impossible inputs give `errors`, never an exception.
 */
export declare const reckonBorders: (input?: BordersInput) => BordersResult | Refused;
