import { type Exact } from '../measure/exact.js';
import { type Purchase } from '../measure/shop.js';
import { type Answer, type Input, type Refused } from './book.js';
export declare const backingFields: {
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
    readonly seam: {
        readonly kind: "length";
        readonly label: "Seam joining panels";
        readonly initial: "1/2 in";
        readonly zero: true;
        readonly most: "4 in";
    };
    readonly repeat: {
        readonly kind: "length";
        readonly label: "Pattern repeat";
        readonly initial: "0";
        readonly zero: true;
        readonly most: "60 in";
        readonly hint: "0 where nothing has to match";
        readonly more: true;
    };
    readonly oneWay: {
        readonly kind: "flag";
        readonly label: "One-way print";
        readonly more: true;
    };
    readonly piecedStrip: {
        readonly kind: "flag";
        readonly label: "Allow a pieced strip";
        readonly hint: "less cloth, more seams";
        readonly more: true;
    };
    readonly fabricWidth: {
        readonly kind: "length";
        readonly label: "Usable width of the cloth";
        readonly initial: "40 in";
        readonly hint: "selvages off; measure yours";
    };
    readonly overage: {
        readonly kind: "length";
        readonly label: "Overage, each side";
        readonly initial: "4 in";
        readonly zero: true;
        readonly most: "36 in";
        readonly hint: "what longarm quilters ask for";
    };
    readonly width: {
        readonly kind: "length";
        readonly label: "Quilt width";
    };
    readonly length: {
        readonly kind: "length";
        readonly label: "Quilt length";
    };
};
/** Input of {@link reckonBacking}: `width`, `length`, `overage`, `fabricWidth`, `seam`, `repeat`, `oneWay`, … */
export type BackingInput = Input<typeof backingFields>;
/** One way to make the back. Lengths are exact inches. */
export interface BackingLayout {
    /** Whole panels, side by side. */
    panels: number;
    /** `lengthwise`: the cloth's length, and the long seams, run along the quilt's length; `crosswise`: across it. */
    direction: 'lengthwise' | 'crosswise';
    /** All seams to sew, the strip's joins included. */
    seams: number;
    /** What each panel is cut to, along the cloth. */
    panelLength: string;
    /** The strips that make up the missing width, joined end to end; only in a layout with a pieced strip. */
    strip?: {
        count: number;
        height: string;
    };
    /** What the joined panels cover across, before trimming. */
    cover: string;
    fabric: string;
    buy: Purchase;
}
/** What {@link reckonBacking} gives back. */
export interface BackingResult extends Answer {
    /** The back's size before quilting. */
    need: {
        width: string;
        length: string;
    };
    /** Every layout that is possible, the one to use first. */
    layouts: BackingLayout[];
    /** The largest piece left over: from the last panel's side. Absent where nothing is left. */
    leftover?: {
        width: string;
        length: string;
    };
}
/** The fewest panels or strips that reach a length; the width must be more than two seams. */
export declare const fewest: (reach: Exact, width: Exact, seam: Exact) => number;
/**
 * Cloth for a quilt's back: every layout of panels, with its seams and cloth; the least cloth first, then the fewest
 * seams. A layout with a pieced strip comes after the whole panels unless `piecedStrip` is set.
 * Impossible inputs give `errors`, never an exception.
 */
export declare const reckonBacking: (input?: BackingInput) => BackingResult | Refused;
