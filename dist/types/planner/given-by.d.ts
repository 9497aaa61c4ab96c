import type { CutPiece, Sheet } from './plan.js';
/** How many of each piece one sheet of a plan gives. */
export declare const givenBy: ({ strips }: Pick<Sheet, "strips">, pieces: number) => number[];
/** The area of one of each piece. */
export declare const areasOf: (pieces: CutPiece[]) => number[];
