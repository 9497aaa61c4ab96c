import type { PATCHES } from '../../trade/patches.js';
/** What a column of a cut list holds. */
export type Column = 'count' | 'fabric' | 'size' | 'width' | 'length' | 'piece';
/** What a piece is cut as: a triangle is cut from a square. */
export type PatchKind = keyof typeof PATCHES;
export declare const HEADS: [Column, RegExp][];
/** What these words call a patch. */
export declare const kindOf: (words: string) => PatchKind;
export declare const isFinished: (words: string) => boolean;
/** Whether triangles are counted by the squares that they are cut from. */
export declare const isOfSquares: (piece: string) => boolean;
/** A written size without the words that may stand beside it. */
export declare const bareSize: (written: string) => string;
