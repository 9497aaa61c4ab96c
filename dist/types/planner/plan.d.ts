import { type Exact } from '../measure/exact.js';
import { type NoPlan } from './grid.js';
/** Equal rectangles to be cut. */
export interface CutPiece {
    /** Inches across the cloth, from selvage to selvage; seam allowances included. */
    width: Exact;
    /** Inches along the cloth. */
    height: Exact;
    /** How many of them. */
    count: number;
    /** Whether it may be turned by a quarter. A one-way print may not. */
    turn: boolean;
}
/** What is cut: cloth bought by length, or sheets (fat quarters and the like). */
export interface Cloth {
    /** Usable inches across. */
    width: Exact;
    /** Usable inches of a sheet along the cloth; left out for cloth bought by length. */
    height?: Exact | undefined;
    /**
     * The step in inches by which a shop cuts cloth. With a step, another order of cuts replaces strips across the cloth only if it
     * saves a whole step. Without one, it replaces them for any saving.
     */
    step?: Exact | undefined;
}
/** Where one piece lies, in inches from the left and the top of its sheet. Its sides are those after turning. */
export interface Placed {
    /** Its place in the list of pieces. */
    piece: number;
    turned: boolean;
    x: Exact;
    y: Exact;
    width: Exact;
    height: Exact;
}
/** A strip from edge to edge, and equal ones below it. */
export interface Strip {
    /** Inches from the top of the sheet to the first of them. */
    y: Exact;
    height: Exact;
    /** How many equal strips lie below each other. */
    times: number;
    /** What each strip gives, from the left: how many of which piece. */
    cuts: {
        piece: number;
        count: number;
    }[];
    /** Where they lie in the first of these strips. */
    placed: Placed[];
}
/** A sheet, and equal ones. */
export interface Sheet {
    times: number;
    /** From the top, tallest first. */
    strips: Strip[];
    /** Inches along the cloth that the strips take. */
    used: Exact;
}
export interface CuttingPlan {
    ok: true;
    /** How the sheets are cut; cloth bought by length is one sheet. */
    sheets: Sheet[];
    /** Sheets needed. */
    count: number;
    /** Inches of cloth used, if it is bought by length. Otherwise the height of a sheet. */
    length: Exact;
    /** No plan can need less than this: inches of cloth, or sheets. */
    bound: Exact;
    /** Whether we have proof that less is impossible. */
    exact: boolean;
}
/** How many lots that makes of a list, which tells how long a plan takes, however many pieces there are. */
export declare const lotsIn: (pieces: CutPiece[]) => number;
/**
 * How to cut the pieces from the least cloth, or from the fewest sheets, with edge-to-edge cuts only. The plan starts with strips
 * across the cloth, unless another order of cuts saves cloth. The same list always gives the same plan. If the pieces cannot be
 * planned, the plan is a problem. Nothing is thrown.
 */
export declare const planCloth: (pieces: CutPiece[], cloth: Cloth) => CuttingPlan | NoPlan;
/**
 * The same plan as `planCloth`, made a few milliseconds at a time, so that the page keeps working.
 *
 * @param signal stops the planning. The promise then rejects with the signal's reason.
 * @param onProgress is told how much is done, from 0 to 1.
 */
export declare const planClothAsync: (pieces: CutPiece[], cloth: Cloth, { signal, onProgress }?: {
    signal?: AbortSignal;
    onProgress?: (done: number) => void;
}) => Promise<CuttingPlan | NoPlan>;
/** Every piece of a plan, one by one, on numbered sheets; at most `most` of them. */
export declare const everyPiece: (plan: CuttingPlan, most?: number) => (Placed & {
    sheet: number;
})[];
