import type { Cloth, CutPiece, CuttingPlan } from './plan.js';
/** What is wrong with a plan. */
export interface Fault {
    /**
     * - `missing`, `extra`: a piece is cut too seldom, or too often or unasked for
     * - `size`, `turned`: a piece is not as large as asked, or turned though it may not be
     * - `outside`: past the edge of its strip, its sheet or the cloth
     * - `overlap`: two pieces, or two strips, share cloth
     * - `uncuttable`: no edge-to-edge cut takes these pieces apart
     * - `miscounted`: the plan's own length or number of sheets is not what it uses
     */
    fault: 'missing' | 'extra' | 'size' | 'turned' | 'outside' | 'overlap' | 'uncuttable' | 'miscounted';
    /** The piece's place in the list, where it is one piece's fault. */
    piece?: number;
}
/**
 * Checks a plan against what was asked for, from the pieces' places alone and with nothing of the planner's: every piece
 * present in its size, none overlapping, all on the cloth, and every one reachable by edge-to-edge cuts.
 *
 * @returns what is wrong; nothing when the plan can be cut.
 */
export declare const checkPlan: (pieces: CutPiece[], cloth: Cloth, { sheets, count, length }: CuttingPlan) => Fault[];
/** Whether a plan can be cut just as it says. A plan that has passed is not checked again. */
export declare const canBeCut: (pieces: CutPiece[], cloth: Cloth, plan: CuttingPlan) => boolean;
