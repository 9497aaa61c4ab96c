import { type Exact } from '../../measure/exact.js';
import type { ListedPiece } from '../cutting/cut-list.js';
import type { Chart, PlacedPatch } from './patch.js';
/** The names of the pieces that a block is cut into. */
export interface PieceSayings {
    square: undefined;
    rectangle: undefined;
    /** Squares for half-square triangles, two or eight at a time. */
    pairSquareTwo: undefined;
    pairSquareEight: undefined;
    quarterTriangles: undefined;
    /** Flying geese one at a time: a rectangle, and a square for each corner. */
    gooseRectangle: undefined;
    skyCorner: undefined;
    /** Flying geese four at a time: one large square, and four small ones. */
    gooseSquare: undefined;
    skySquare: undefined;
    /** A square in a square. */
    middleSquare: undefined;
    cornerTriangles: undefined;
}
/** How units of two fabrics are made. */
export interface Method {
    halves: 'two' | 'eight';
    geese: 'one' | 'four';
    /** Rows of equal patches: patch by patch, or from strips that are sewn together and cut across. */
    rows: 'patches' | 'strips';
}
/** The seam allowance, and the marks that cut sizes fall on. */
export interface Seams {
    seam: Exact;
    mark: Exact;
}
/** The finished size of a patch in a block of this size. */
export declare const sizeOf: ({ across, down }: Pick<PlacedPatch, "across" | "down">, { columns, rows }: Chart, block: Exact) => {
    width: Exact;
    length: Exact;
};
/** The pieces to cut for so many blocks. Whole squares are counted for all blocks together. */
export declare const piecesFor: (chart: Chart, block: Exact, blocks: number, method: Method, seams: Seams) => ListedPiece[];
