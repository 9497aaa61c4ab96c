import { type Exact } from '../measure/exact.js';
/** Equal squares for continuous bias. */
interface BiasSquares {
    side: Exact;
    count: number;
    /** Whole rounds that the tube of each gives. */
    rounds: number;
    /** The square of the length of all rounds, joins between the squares not yet taken off. */
    lengthSquared: Exact;
}
/** What a bias binding or piping is to be. */
export interface BiasNeed {
    length: Exact;
    strip: Exact;
    /** Allowance of the tube's two seams. */
    seam: Exact;
    /** What joining the bias of one square to the next uses up. */
    join: Exact;
    /** Sides are whole multiples of this. */
    unit: Exact;
}
/**
 * The side by area alone: √(length × strip) + 2 seams, up to a whole unit. It takes every inch of the tube for usable,
 * so it can be short by the part of a round that is narrower than a strip.
 */
export declare const squareByArea: ({ length, strip, seam, unit }: BiasNeed) => Exact;
/**
 * The fewest equal squares, none wider than the widest, whose whole rounds reach the length; undefined where the widest
 * holds no round. A square of side a is cut on its diagonal and sewn up as a tube by two seams: with x = a − 2 seams the
 * tube's bias edges are x ÷ √2 apart and a round is x × √2 long. Compared by squares, so that no root is ever rounded.
 */
export declare const biasSquares: ({ length, strip, seam, join, unit }: BiasNeed, widest: Exact) => BiasSquares | undefined;
export {};
