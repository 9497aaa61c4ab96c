import type { CutPiece, Sheet } from './plan.js';

/** How many of each piece one sheet of a plan gives. */
export const givenBy = ({ strips }: Pick<Sheet, 'strips'>, pieces: number): number[] => {
  const counts = Array<number>(pieces).fill(0);
  for (const { cuts, times } of strips)
    for (const { piece, count } of cuts) counts[piece] = (counts[piece] ?? 0) + count * times;
  return counts;
};

/** The area of one of each piece. */
export const areasOf = (pieces: CutPiece[]): number[] =>
  pieces.map(({ width, height }) => width.mul(height).valueOf());
