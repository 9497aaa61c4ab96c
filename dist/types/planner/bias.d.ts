import { type Exact } from '../measure/exact.js';
/** Equal squares for continuous bias. */
interface BiasSquares {
    side: Exact;
    count: number;
    /** Whole rounds that the tube of each gives. */
    rounds: number;
    /** The length of all rounds, squared, before the joins between the squares are taken off. */
    lengthSquared: Exact;
}
/** What somebody wants of a bias binding or piping. */
export interface BiasNeed {
    length: Exact;
    strip: Exact;
    /** Allowance of the tube's two seams. */
    seam: Exact;
    /** What joining the bias of one square to the next uses up. */
    join: Exact;
    /** Each side is a whole multiple of this. */
    unit: Exact;
}
/**
 * The side by area alone: √(length × strip) + 2 seams, rounded up to a whole unit. This rule counts every inch of the tube, also
 * a last round that is narrower than a strip. So it can be too small.
 */
export declare const squareByArea: ({ length, strip, seam, unit }: BiasNeed) => Exact;
/**
 * The fewest equal squares, none wider than `widest`, whose whole rounds reach the length. Undefined if not even the widest
 * holds a round. A square of side a is cut on its diagonal and sewn up as a tube by two seams: with x = a − 2 seams the
 * tube's bias edges are x ÷ √2 apart and a round is x × √2 long. It compares squares, so no root is ever rounded.
 */
export declare const biasSquares: ({ length, strip, seam, join, unit }: BiasNeed, widest: Exact) => BiasSquares | undefined;
export {};
