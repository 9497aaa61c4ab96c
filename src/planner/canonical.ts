import { least, most, type Exact } from '../measure/exact.js';
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

/**
 * Its long side across, if it may be turned. A top plans its pieces in the same way, so a joint plan is never worse. A square looks
 * the same turned.
 */
const lying = ({ width, height, count, turn }: CutPiece): CutPiece => {
  const turns = turn || width.equals(height);
  return turns
    ? { width: most(width, height), height: least(width, height), count, turn: true }
    : { width, height, count, turn: false };
};

const byBoth = (a: Exact, b: Exact, c: Exact, d: Exact): number => b.compare(a) || d.compare(c);

const bySize = (a: CutPiece, b: CutPiece): number =>
  byBoth(a.width, b.width, a.height, b.height) || Number(a.turn) - Number(b.turn);

/** The pieces in an order that does not depend on theirs: the largest first, and of equal ones the line with most of them. */
export const inSizeOrder = <P extends CutPiece>(pieces: P[]): P[] =>
  pieces.map((piece): P => ({ ...piece, ...lying(piece) })).sort((a, b) => bySize(a, b) || b.count - a.count);

/** The pieces of several lists as one list, with equal pieces together. */
export const joined = <P extends CutPiece>(lists: P[][]): Joined<P> => {
  const sizes = new Map<string, { piece: CutPiece; wanted: number[]; from: P[] }>();
  lists.forEach((list, at) => {
    for (const one of list) {
      const piece = lying(one);
      const key = [piece.width.toFraction(), piece.height.toFraction(), piece.turn].join();
      const known = sizes.get(key) ?? {
        piece: { ...piece, count: 0 },
        wanted: lists.map(() => 0),
        from: [],
      };
      sizes.set(key, known);
      known.from.push(one);
      known.piece.count += piece.count;
      known.wanted[at] = (known.wanted[at] ?? 0) + piece.count;
    }
  });
  const sorted = [...sizes.values()].sort((a, b) => bySize(a.piece, b.piece));
  return {
    pieces: sorted.map(({ piece }) => piece),
    wanted: lists.map((_, at) => sorted.map(({ wanted }) => wanted[at] ?? 0)),
    from: sorted.map(({ from }) => from),
  };
};
