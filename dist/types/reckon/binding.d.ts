import { type Answer, type Input, type Refused } from './book.js';
export declare const bindingFields: {
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
    readonly cut: {
        readonly kind: "choice";
        readonly label: "Cut";
        readonly initial: "straight";
        readonly options: {
            readonly straight: "straight, across the cloth";
            readonly bias: "bias";
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
        readonly label: "Seam";
        readonly initial: "1/4 in";
        readonly most: "4 in";
        readonly hint: "of a straight join, and of the bias tube";
        readonly more: true;
    };
    readonly fabricWidth: {
        readonly kind: "length";
        readonly label: "Usable width of the cloth";
        readonly initial: "40 in";
        readonly hint: "selvages off; measure yours";
    };
    readonly width: {
        readonly optional: true;
        readonly kind: "length";
        readonly label: "Quilt width";
    };
    readonly length: {
        readonly optional: true;
        readonly kind: "length";
        readonly label: "Quilt length";
    };
    readonly perimeter: {
        readonly kind: "length";
        readonly label: "Way round, measured";
        readonly optional: true;
        readonly most: "4000 in";
        readonly hint: "for curved edges, in place of width and length";
        readonly more: true;
    };
    readonly allowance: {
        readonly kind: "length";
        readonly label: "Corners and closing";
        readonly initial: "10 in";
        readonly zero: true;
        readonly most: "100 in";
        readonly hint: "mitres and the closing tails";
    };
    readonly stripWidth: {
        readonly kind: "length";
        readonly label: "Strip width";
        readonly optional: true;
        readonly hint: "as cut, in place of a finished width";
    };
    readonly finished: {
        readonly kind: "length";
        readonly label: "Finished width";
        readonly optional: true;
        readonly most: "6 in";
        readonly hint: "as it shows on the front";
    };
    readonly fold: {
        readonly kind: "choice";
        readonly label: "Fold";
        readonly initial: "double";
        readonly options: {
            readonly double: "double-fold";
            readonly single: "single-fold";
        };
    };
    readonly thickness: {
        readonly kind: "length";
        readonly label: "Thickness of the quilt";
        readonly initial: "1/8 in";
        readonly zero: true;
        readonly most: "2 in";
        readonly hint: "goes into a finished width";
        readonly more: true;
    };
};
/** Input of {@link reckonBinding}: `width`, `length`, `perimeter`, `allowance`, `stripWidth`, `finished`, `fold`, … */
export type BindingInput = Input<typeof bindingFields>;
/** What {@link reckonBinding} gives back. Lengths are exact inches. */
export interface BindingResult extends Answer {
    /** The binding needed: the way round and the allowance. */
    length: string;
    /** Strips to join: cut across the cloth, or the one long strip that each bias square gives. */
    strips: number;
    /** What each strip is cut to across. */
    stripWidth: string;
    /** How long the strips are once joined; for bias on a ruler mark, rounded down. */
    yields: string;
    /** Bias: the side of each square. */
    square?: string;
    /** Bias: how many squares. */
    squares?: number;
    /** Bias: how many whole rounds each square's tube gives. */
    rounds?: number;
    /** Bias: the side by area alone, which is the usual rule; its tube can end in a round too narrow to use. */
    byArea?: string;
    /** The same binding from fat quarters: strips along the longer side, or for bias a square each. Absent where none fits. */
    fatQuarters?: {
        strips: number;
        count: number;
    };
}
/**
 * Cloth for a quilt's binding: strips across the cloth joined end to end, or squares for continuous bias; and the same
 * from fat quarters. Impossible inputs give `errors`, never an exception.
 */
export declare const reckonBinding: (input?: BindingInput) => BindingResult | Refused;
