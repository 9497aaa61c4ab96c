import type { Cloth, CutPiece, CuttingPlan } from './plan.js';
/** What is wrong with a plan. */
export interface Fault {
    /**
     * - `missing`, `extra`: a piece is cut too few times, or too many times, or nobody asked for it
     * - `size`, `turned`: a piece has the wrong size, or is turned and may not be
     * - `outside`: past the edge of its strip, its sheet or the cloth
     * - `overlap`: two pieces, or two strips, share cloth
     * - `uncuttable`: no edge-to-edge cut takes these pieces apart
     * - `miscounted`: the plan's own length or number of sheets is not what it uses
     */
    fault: 'missing' | 'extra' | 'size' | 'turned' | 'outside' | 'overlap' | 'uncuttable' | 'miscounted';
    /** The place of the piece in the list, if one piece is the problem. */
    piece?: number;
}
/**
 * Checks a plan against the list. It looks only at where the pieces are, and uses none of the planner's code. Every piece has to
 * be there in its size, on the cloth, without overlap, and edge-to-edge cuts have to reach it.
 *
 * @returns what is wrong, or an empty list if the plan can be cut.
 */
export declare const checkPlan: (pieces: CutPiece[], cloth: Cloth, { sheets, count, length }: CuttingPlan) => Fault[];
/** Whether a plan can be cut as it says. A plan that has passed is not checked again. */
export declare const canBeCut: (pieces: CutPiece[], cloth: Cloth, plan: CuttingPlan) => boolean;
