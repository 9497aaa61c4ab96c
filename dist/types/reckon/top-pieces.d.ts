import { type Exact } from '../measure/exact.js';
import type { Cut } from './answer.js';
import type { Book } from './book.js';
import type { Fields } from './fields.js';
/** How a top is laid out. */
export interface Layout {
    block: Exact;
    across: number;
    down: number;
    /** In all: on point also those in between. */
    blocks: number;
    onPoint: boolean;
    sashing: Exact;
    cornerstones: boolean;
    /** Whether sashing runs round the outside too. */
    frame: boolean;
    seam: Exact;
    mark: Exact;
    /** The top's, as reckoned or measured. */
    finishedWidth: Exact;
}
/** √2 times a length, never short: on point everything grows by it. */
export declare const diagonal: (side: Exact) => Exact;
/** Sashing and cornerstones, as they are cut. */
export declare const sashingPieces: <F extends Fields>(book: Book<F>, { block, across, down, blocks, onPoint, sashing, cornerstones, frame, seam, mark, finishedWidth }: Layout) => {
    sashes: Cut[];
    stones: Cut[];
};
/**
 * The same pieces where those longer than the cloth is wide are joined from strips across it: whole ones, and an end that
 * reaches as far as is left. Nothing where none is so long, or where a seam uses up a whole strip.
 */
export declare const joinedPieces: <F extends Fields>(book: Book<F>, cuts: Cut[], cloth: Exact, { seam, mark }: Layout) => Cut[] | undefined;
/** The squares that the setting triangles of a top on point are cut from, with their rows. */
export declare const settingTriangles: <F extends Fields>(book: Book<F>, { block, across, down, sashing, seam, mark }: Layout) => {
    squares: {
        sideTriangles: number;
        sideSquare: Exact;
        cornerSquare: Exact;
    };
    cuts: Cut[];
};
