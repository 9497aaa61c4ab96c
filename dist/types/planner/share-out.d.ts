import type { CutPiece, CuttingPlan } from './plan.js';
/** What one list cuts from one sheet. */
export interface CutFromSheet {
    /** The number of the sheet, from 0, in the order in which they are opened. */
    sheet: number;
    /** How many of each piece. */
    counts: number[];
}
/** What one list cuts, and how many sheets it opens. */
export interface Share {
    cuts: CutFromSheet[];
    opened: number;
}
export interface SharedOut {
    /** One for each list, in their order. */
    shares: Share[];
    /** For each sheet in the order in which they are opened: its place in the plan. */
    order: number[];
}
/**
 * Shares a plan of several lists out to them, in their order. Equal pieces are interchangeable, so a list takes what the sheets that
 * are open already still have, and then opens those that give most of the rest. Undefined if there are too many sheets, or if the
 * plan does not have what the lists want.
 */
export declare const shareOut: (plan: CuttingPlan, pieces: CutPiece[], wanted: number[][]) => SharedOut | undefined;
