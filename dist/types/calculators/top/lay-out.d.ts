import type { Layout, PartKind } from './shape.js';
type Point = [x: number, y: number];
/** A piece of a top as it finishes: its corners in inches, clockwise. A block begins with its own top left corner. */
export interface Piece {
    kind: PartKind | 'block';
    points: Point[];
    /** For a block: its row. On point, the rows between others count too. */
    row?: number;
}
/** A top, every piece of it once, and no two of them one over the other. */
export interface LaidOut {
    width: number;
    height: number;
    pieces: Piece[];
}
/** More blocks than this are drawn as one field: nobody could tell them apart. */
export declare const MOST_DRAWN = 900;
/** Every piece of a top in its place, row by row. A top of very many blocks is one piece. */
export declare const layOut: (layout: Layout) => LaidOut;
export {};
