import { type Cloth, type CuttingPlan } from '../cutting/plan.js';
import { type Exact } from '../measure/exact.js';
import type { Unwritten } from './answer.js';
/** Where one piece lies. Exact inches from the left and the top of its cloth or sheet. */
export interface LaidPiece {
    x: string;
    y: string;
    width: string;
    height: string;
    /** The piece's name in the cut list. */
    piece: string;
    /** The sheet it lies on, from 0. */
    sheet: number;
    /** Of a square that triangles are cut from: how many, 2 or 4. */
    triangles?: number;
}
/** Strips cut alike across the cloth, and what each gives. */
export interface CutStrip {
    count: number;
    height: string;
    gives: {
        piece: string;
        count: number;
    }[];
}
/** Of a plan that cannot be cut as it says, which nobody may see. */
export declare const UNSOUND = "This layout did not pass its check and is not shown. Change a size a little, or plan it in parts.";
/** A plan's strips from the top of the cloth, in words that anyone can read. */
export declare const stripsOf: ({ sheets }: CuttingPlan, names: string[]) => CutStrip[];
/** Strips by their heights: `8 × 2 1/2 + 1 × 12 1/2`, and what becomes of their sum. */
export declare const stacked: (strips: CutStrip[], n: (height: Exact) => string, then?: string) => string;
/** The same, and where each piece lies. */
export declare const laidOut: (plan: CuttingPlan, { width, height }: Cloth, names: string[], triangles?: number[]) => {
    strips: CutStrip[];
    layout: Unwritten<LaidPiece>[];
    width: Exact;
    height: Exact;
};
