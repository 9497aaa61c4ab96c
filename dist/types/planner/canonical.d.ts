import type { CutPiece } from './plan.js';
/** What several lists want of the same cloth, as one list. */
export interface Joined<P extends CutPiece = CutPiece> {
    /** Each size once, the largest first, so that the order of the lists does not matter. */
    pieces: CutPiece[];
    /** For each list, how many it wants of each of these pieces. */
    wanted: number[][];
    /** For each of these pieces: those of the lists that it stands for. */
    from: P[][];
}
/** The pieces in an order that does not depend on theirs: the largest first, and of equal ones the line with most of them. */
export declare const inSizeOrder: <P extends CutPiece>(pieces: P[]) => P[];
/** The pieces of several lists as one list, with equal pieces together. */
export declare const joined: <P extends CutPiece>(lists: P[][]) => Joined<P>;
