import type { Exact } from '../measure/exact.js';
import type { NoPlan } from './grid.js';
import type { Cloth, CutPiece, CuttingPlan } from './plan.js';
/** Equal pieces of cloth that somebody has already. */
export interface OwnPiece {
    width: Exact;
    height: Exact;
    count: number;
}
/** What is cut from some of them. */
export interface CutFromOwn {
    /** Their place in the list. */
    own: number;
    /** One sheet for each of them that is used. Its pieces have the places of those that were asked for. */
    plan: CuttingPlan;
    /** How many of each piece. */
    counts: number[];
}
export interface OwnCut {
    used: CutFromOwn[];
    /** How many of each piece are left to cut from other cloth. */
    rest: number[];
}
/** Plans pieces on cloth, or gives its progress. */
type PlanOn = (pieces: CutPiece[], cloth: Cloth) => CuttingPlan | NoPlan | number;
/**
 * Cuts as much as it can from cloth that is there already, in the order of that cloth: plans all pieces that fit on pieces of one
 * size, and uses the fullest of them. Gives the progress of a plan that is not ready yet.
 */
export declare const cutFromOwn: (wanted: CutPiece[], cloth: OwnPiece[], plan: PlanOn) => OwnCut | number;
/**
 * The largest number of things, at most so many, whose pieces can be cut from this cloth. It halves the range that is left, so it
 * makes few plans. Undefined while a plan is not ready.
 */
export declare const mostThatFit: (piecesOf: (things: number) => CutPiece[], cloth: OwnPiece[], most: number, plan: PlanOn) => number | undefined;
export {};
