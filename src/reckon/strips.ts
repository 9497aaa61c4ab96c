import { everyPiece, type Cloth, type CuttingPlan } from '../planner/plan.js';
import { exact, type Exact } from '../measure/exact.js';
import { mixed } from '../measure/format.js';
import type { Unwritten } from './answer.js';

/** Where one piece lies. Exact inches from the left and the top of its cloth or sheet. */
export interface LaidPiece {
  x: string;
  y: string;
  width: string;
  height: string;
  /** The piece's name in the cut list. */
  piece: string;
  /** The sheet it lies on, from 0. */
  sheet: number;
  /** Of a square that triangles are cut from: how many, 2 or 4. */
  triangles?: number;
}

/** Strips cut alike across the cloth, and what each gives. */
export interface CutStrip {
  count: number;
  height: string;
  gives: { piece: string; count: number }[];
}

/** Of a plan that cannot be cut as it says, which nobody may see. */
export const UNSOUND =
  'This layout did not pass its check and is not shown. Change a size a little, or plan it in parts.';

/** Pieces that a drawing shows one by one. */
const MOST_DRAWN = 1500;

/** A plan's strips from the top of the cloth, in words that anyone can read. */
export const stripsOf = ({ sheets }: CuttingPlan, names: string[]): CutStrip[] =>
  sheets.flatMap(({ times, strips }) =>
    strips.map((strip) => ({
      count: strip.times * times,
      height: mixed(strip.height),
      gives: strip.cuts.map(({ piece, count }) => ({ piece: names[piece]!, count })),
    })),
  );

/** Strips by their heights: `8 × 2 1/2 + 1 × 12 1/2`, and what becomes of their sum. */
export const stacked = (strips: CutStrip[], n: (height: Exact) => string, then = ''): string => {
  const heights = new Map<string, number>();
  for (const { count, height } of strips) heights.set(height, (heights.get(height) ?? 0) + count);
  const all = [...heights].map(([height, count]) => `${count} × ${n(exact(height))}`).join(' + ');
  return then && heights.size > 1 ? `(${all})${then}` : all + then;
};

/** The same, and where each piece lies. */
export const laidOut = (
  plan: CuttingPlan,
  { width, height = plan.length }: Cloth,
  names: string[],
  triangles: number[] = [],
): { strips: CutStrip[]; layout: Unwritten<LaidPiece>[]; width: Exact; height: Exact } => ({
  strips: stripsOf(plan, names),
  layout: everyPiece(plan, MOST_DRAWN).map(({ x, y, width, height, piece, sheet }) => ({
    x,
    y,
    width,
    height,
    piece: names[piece]!,
    sheet,
    triangles: triangles[piece]! > 1 ? triangles[piece] : undefined,
  })),
  width,
  height,
});
