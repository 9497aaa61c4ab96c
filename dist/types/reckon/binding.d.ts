import type { Answer, Input, Refused } from './answer.js';
export declare const bindingFields: {
    shrinkage: import("./fields.js").Field<import("fraction.js").default>;
    increment: import("./fields.js").Field<import("../measure/shop.js").Step>;
    price: import("./fields.js").Field<import("fraction.js").default | undefined>;
    currency: import("./fields.js").Field<string | undefined>;
    mark: import("./fields.js").Field<import("fraction.js").default>;
    cut: import("./fields.js").Field<string>;
    join: import("./fields.js").Field<string>;
    seam: import("./fields.js").Field<import("fraction.js").default>;
    fabricWidth: import("./fields.js").Field<import("fraction.js").default>;
    width: import("./fields.js").Field<import("fraction.js").default | undefined>;
    length: import("./fields.js").Field<import("fraction.js").default | undefined>;
    perimeter: import("./fields.js").Field<import("fraction.js").default | undefined>;
    allowance: import("./fields.js").Field<import("fraction.js").default>;
    stripWidth: import("./fields.js").Field<import("fraction.js").default | undefined>;
    finished: import("./fields.js").Field<import("fraction.js").default | undefined>;
    fold: import("./fields.js").Field<string>;
    thickness: import("./fields.js").Field<import("fraction.js").default>;
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
