import { Cut } from '../../ledger/purchase.js';
import { type Exact } from '../../measure/exact.js';
import { type Layout, type TopAnswer, type TopLedger } from './shape.js';
type Seams = Pick<TopLedger['values'], 'seam' | 'mark'>;
/** Sashing and cornerstones, as they are cut. */
export declare const sashingPieces: ({ across, down, count: blocks, block, onPoint, sashing, cornerstones, frame }: Layout, finishedWidth: Exact, { seam, mark }: Seams) => {
    sashes: Cut[];
    stones: Cut[];
};
/**
 * The same pieces, but those that are longer than the cloth is wide are joined from strips across it: whole strips, and an end for
 * the rest. Undefined if no piece is that long, or if a seam uses up a whole strip.
 */
export declare const joinedPieces: (cuts: Cut[], cloth: Exact, { seam, mark }: Seams) => Cut[] | undefined;
/** The squares for the setting triangles of a top on point, with their rows. */
export declare const settingTriangles: (ledger: TopLedger) => {
    squares: Pick<TopAnswer, "sideTriangles" | "sideSquare" | "cornerSquare">;
    cuts: Cut[];
};
export {};
