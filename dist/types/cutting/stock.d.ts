import { type Exact } from '../measure/exact.js';
import { type NoPlan } from './grid.js';
/** Equal lengths to be cut. */
export interface StockPiece {
    /** Inches, joins and seams included. */
    length: Exact;
    /** How many of them. */
    count: number;
}
/** Stock lengths that are all cut alike. */
export interface StockCuts {
    /** What each gives, longest first: how many of which piece (its place in the list that was asked for). */
    cuts: {
        piece: number;
        count: number;
    }[];
    /** How many stock lengths are cut so. */
    times: number;
    /** Inches of each that are used. */
    used: Exact;
    /** Inches of each that are left over. */
    left: Exact;
}
export interface StockPlan {
    ok: true;
    /** Stock lengths needed. */
    count: number;
    /** How they are cut, in the order of cutting. */
    stocks: StockCuts[];
    /** Whether fewer are proven impossible. */
    exact: boolean;
    /** No plan can do with fewer than this. */
    bound: number;
}
/**
 * The least number of stock lengths (cloth strips, bolts) from which the pieces can be cut, and what is cut from each.
 * Proven least where the search is small enough; otherwise the best plan found, with a bound below which none can go.
 * The same pieces always give the same plan. Pieces that cannot be cut give a message; nothing is thrown.
 *
 * @param pieces a length may appear more than once; each keeps its own place in the plan.
 * @param stockLength inches, the same for every stock length.
 */
export declare const planStock: (pieces: StockPiece[], stockLength: Exact) => StockPlan | NoPlan;
