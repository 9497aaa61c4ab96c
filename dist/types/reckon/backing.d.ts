import type { Purchase } from '../measure/shop.js';
import type { Answer, Input, Refused } from './answer.js';
import { type Size } from './shared.js';
export declare const backingFields: {
    shrinkage: import("./fields.js").Field<import("fraction.js").default>;
    increment: import("./fields.js").Field<import("../measure/shop.js").Step>;
    price: import("./fields.js").Field<import("fraction.js").default | undefined>;
    currency: import("./fields.js").Field<string | undefined>;
    seam: import("./fields.js").Field<import("fraction.js").default>;
    repeat: import("./fields.js").Field<import("fraction.js").default>;
    oneWay: import("./fields.js").Field<boolean>;
    piecedStrip: import("./fields.js").Field<boolean>;
    fabricWidth: import("./fields.js").Field<import("fraction.js").default>;
    overage: import("./fields.js").Field<import("fraction.js").default>;
    width: import("./fields.js").Field<import("fraction.js").default>;
    length: import("./fields.js").Field<import("fraction.js").default>;
};
/** Input of {@link reckonBacking}: `width`, `length`, `overage`, `fabricWidth`, `seam`, `repeat`, `oneWay`, … */
export type BackingInput = Input<typeof backingFields>;
/** One way to make the back. Lengths are exact inches. */
export interface BackingLayout<Length = string> {
    /** Whole panels, side by side. */
    panels: number;
    /** `lengthwise`: the cloth's length, and the long seams, run along the quilt's length; `crosswise`: across it. */
    direction: 'lengthwise' | 'crosswise';
    /** All seams to sew, the strip's joins included. */
    seams: number;
    /** What each panel is cut to, along the cloth. */
    panelLength: Length;
    /** The strips that make up the missing width, joined end to end; only in a layout with a pieced strip. */
    strip?: {
        count: number;
        height: Length;
    };
    /** What the joined panels cover across, before trimming. */
    cover: Length;
    fabric: Length;
    buy: Purchase;
}
/** What {@link reckonBacking} gives back. */
export interface BackingResult extends Answer {
    /** The back's size before quilting. */
    need: Size;
    /** Every layout that is possible, the one to use first. */
    layouts: BackingLayout[];
    /** The largest piece left over: from the last panel's side. Absent where nothing is left. */
    leftover?: Size;
}
/**
 * Cloth for a quilt's back: every layout of panels, with its seams and cloth; the least cloth first, then the fewest
 * seams. A layout with a pieced strip comes after the whole panels unless `piecedStrip` is set.
 * Impossible inputs give `errors`, never an exception.
 */
export declare const reckonBacking: (input?: BackingInput) => BackingResult | Refused;
