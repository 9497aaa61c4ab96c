import { type Exact } from '../measure/exact.js';
import type { Piece } from './border-lengths.js';
/** Pieces of one border that are cut to the same width; all sizes are those that are really cut. */
export interface Lot {
    width: Exact;
    pieces: {
        length: Exact;
        count: number;
    }[];
}
/**
 * A border's pieces by their cut width, in the sizes that the cut list gives. A mark may lie below a size, by less than
 * anybody can cut: then the size itself counts, so that cloth is never short of either.
 */
export declare const lotsOf: (pieces: Piece[], mark: Exact) => Lot[];
/** The cloth the strips are cut from. */
export interface Cloth {
    /** Usable width, once washed. */
    width: Exact;
    /** What a join of two strips of that width uses up. */
    lossOf: (stripWidth: Exact) => Exact;
    /** What a wash leaves of each inch. */
    kept: Exact;
}
/** Equal pieces, each joined from whole strips and a last one. */
export interface Parts {
    whole: number;
    /** What the last strip is cut to; all there is of a piece no longer than the cloth is wide. */
    length: Exact;
    count: number;
}
/** The strips for one lot. */
export interface LotStrips {
    lot: Lot;
    strips: number;
    joins: number;
    /** How each of the lot's pieces is made, where each is made on its own. */
    parts?: Parts[];
}
/** One way to cut a border. */
export interface BorderPlan {
    /** `joined`: strips across the cloth, joined into one length and cut up; `separate`: strips across the cloth, each piece
     * made on its own; `along`: parallel to the selvage, without joins. */
    plan: 'joined' | 'separate' | 'along';
    strips: number;
    joins: number;
    /** As bought, before the wash. */
    fabric: Exact;
    lots: LotStrips[];
    /** Along the cloth: the length of each row of strips side by side. */
    rows: Exact[];
}
/** Every way to cut a border that this cloth allows: joined, separate, along. */
export declare const borderPlans: (lots: Lot[], cloth: Cloth) => BorderPlan[];
/**
 * The plan to use; undefined where there is none for this grain. Across the cloth it is the one with fewer strips (less
 * cloth, where strips have two widths), then with fewer joins; a tie goes to the joined one, where nothing has to be kept
 * apart.
 */
export declare const bestPlan: (plans: BorderPlan[], grain: string) => BorderPlan | undefined;
/** How a plan's strips were counted and what cloth they take, with the numbers filled in. */
export declare const planWords: ({ lots, rows }: BorderPlan, { width, lossOf }: Cloth, n: (value: Exact) => string) => {
    strips: string;
    fabric: string;
};
