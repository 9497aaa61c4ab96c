import { type Purchase } from '../measure/shop.js';
import { type Answer, type Input, type Refused } from './book.js';
import { type BorderPlan } from './border-strips.js';
export declare const bordersFields: {
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
    readonly grain: {
        readonly kind: "choice";
        readonly label: "Strips cut";
        readonly initial: "across";
        readonly options: {
            readonly across: "across the cloth";
            readonly along: "along the cloth";
        };
    };
    readonly join: {
        readonly kind: "choice";
        readonly label: "Strips joined";
        readonly initial: "diagonal";
        readonly options: {
            readonly diagonal: "at 45°";
            readonly straight: "straight";
        };
    };
    readonly seam: {
        readonly kind: "length";
        readonly label: "Seam allowance";
        readonly initial: "1/4 in";
        readonly zero: true;
        readonly most: "2 in";
    };
    readonly fabricWidth: {
        readonly kind: "length";
        readonly label: "Usable width of the cloth";
        readonly initial: "40 in";
        readonly hint: "selvages off; measure yours";
    };
    readonly width: {
        readonly kind: "length";
        readonly label: "Top width";
        readonly hint: "finished, without borders";
    };
    readonly length: {
        readonly kind: "length";
        readonly label: "Top length";
        readonly hint: "finished, without borders";
    };
    readonly borders: {
        readonly kind: "lengths";
        readonly label: "Border width";
        readonly optional: true;
        readonly hint: "finished; from the inside out";
    };
    readonly corners: {
        readonly kind: "choices";
        readonly label: "Corners";
        readonly initial: "sides-first";
        readonly options: {
            readonly 'sides-first': "sides first";
            readonly 'ends-first': "top and bottom first";
            readonly squares: "corner squares";
            readonly mitred: "mitred";
        };
    };
    readonly target: {
        readonly kind: "size";
        readonly label: "Wanted size";
        readonly optional: true;
        readonly hint: "reached with one more border";
    };
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
export interface Border {
    /** Its finished width; at the sides, where top and bottom differ. */
    finished: string;
    /** Its finished width at top and bottom, where that differs. */
    finishedEnds?: string;
    corners: string;
    pieces: BorderPiece[];
    /** The plan that is used, with its strips, joins and cloth. */
    plan: BorderPlan['plan'];
    strips: number;
    joins: number;
    fabric: string;
    /** What to buy where this border has a cloth of its own. */
    buy: Purchase;
    /** Every plan that the cloth allows: across joined, across separate, along. */
    plans: {
        plan: BorderPlan['plan'];
        strips: number;
        joins: number;
        fabric: string;
        buy: Purchase;
    }[];
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
