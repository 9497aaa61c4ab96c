import type { PATCHES } from '../../trade/patches.js';
/** What a column of a cut list holds. */
export type Column = 'count' | 'fabric' | 'size' | 'width' | 'length' | 'piece';
/** The kind of a piece. A triangle is cut from a square. */
export type PatchKind = keyof typeof PATCHES;
export declare const HEADS: [Column, RegExp][];
/** The kind of patch that these words name. */
export declare const kindOf: (words: string) => PatchKind;
export declare const isFinished: (words: string) => boolean;
/** Whether the list counts the squares, not the triangles that are cut from them. */
export declare const isOfSquares: (piece: string) => boolean;
/** The name of a piece without the words that say how it is cut. */
export declare const bareName: (written: string) => string;
/** A size without the words beside it. */
export declare const bareSize: (written: string) => string;
