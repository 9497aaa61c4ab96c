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
    /** Whether it may be turned by a quarter; a one-way print forbids it. */
    turn: boolean;
}
/** What is cut: cloth bought by length, or sheets (fat quarters and the like). */
export interface Cloth {
    /** Usable inches across. */
    width: Exact;
    /** Usable inches of a sheet along the cloth; left out for cloth bought by length. */
    height?: Exact | undefined;
    /**
     * Inches in which a shop cuts cloth bought by length. Strips across the cloth are then given up only for cuts in
     * another order that save a whole step; left out, for any saving.
     */
    step?: Exact | undefined;
}
/** Where one piece lies: inches from the left and the top of its sheet, as turned. */
export interface Placed {
    /** Its place in the list that was asked for. */
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
    /** What each gives: how many of which piece, from the left. */
    cuts: {
        piece: number;
        count: number;
    }[];
    /** Where they lie in the first of these strips. */
    placed: Placed[];
}
/** A sheet, and others cut alike. */
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
    /** Inches of cloth used, where it is bought by length; otherwise a sheet's height. */
    length: Exact;
    /** No plan can do with less: inches of cloth, or sheets. */
    bound: Exact;
    /** Whether less is proven impossible. */
    exact: boolean;
}
/**
 * How to cut the pieces from the least cloth, or from the fewest sheets, with edge-to-edge cuts only. Strips across the
 * cloth come first unless another order of cutting saves cloth. The same list always gives the same plan. Pieces that
 * cannot be planned give a problem; nothing is thrown.
 */
export declare const planCloth: (pieces: CutPiece[], cloth: Cloth) => CuttingPlan | NoPlan;
/**
 * The same plan as `planCloth`, made a few milliseconds at a time so that a page stays alive.
 *
 * @param signal stops the planning: the promise is then rejected with the signal's reason.
 * @param onProgress is told how much is done, from 0 to 1.
 */
export declare const planClothAsync: (pieces: CutPiece[], cloth: Cloth, { signal, onProgress }?: {
    signal?: AbortSignal;
    onProgress?: (done: number) => void;
}) => Promise<CuttingPlan | NoPlan>;
/** Every piece of a plan, one by one, on numbered sheets; at most so many. */
export declare const everyPiece: (plan: CuttingPlan, most?: number) => (Placed & {
    sheet: number;
})[];
