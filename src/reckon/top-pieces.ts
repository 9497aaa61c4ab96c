import { fewest } from '../planner/joins.js';
import { exact, least, most, rootUp, toMark, type Exact } from '../measure/exact.js';
import { PATCHES } from '../trade/patches.js';
import type { Cut } from './answer.js';
import type { Book } from './book.js';
import type { Fields } from './fields.js';

/** How a top is laid out. */
export interface Layout {
  block: Exact;
  across: number;
  down: number;
  /** In all: on point also those in between. */
  blocks: number;
  onPoint: boolean;
  sashing: Exact;
  cornerstones: boolean;
  /** Whether sashing runs round the outside too. */
  frame: boolean;
  seam: Exact;
  mark: Exact;
  /** The top's, as reckoned or measured. */
  finishedWidth: Exact;
}

/** √2 times a length, never short: on point everything grows by it. */
export const diagonal = (side: Exact): Exact => rootUp(side.mul(side).mul(2));

/** Sashing and cornerstones, as they are cut. */
export const sashingPieces = <F extends Fields>(
  book: Book<F>,
  { block, across, down, blocks, onPoint, sashing, cornerstones, frame, seam, mark, finishedWidth }: Layout,
): { sashes: Cut[]; stones: Cut[] } => {
  const sashes: Cut[] = [];
  const stones: Cut[] = [];
  if (sashing.equals(0)) return { sashes, stones };
  const cutSize = (finished: Exact): Exact => toMark(finished.add(seam.mul(2)), mark);
  const narrow = cutSize(sashing);
  const add = (to: Cut[], count: number, piece: string, long: Exact): void => {
    if (count) to.push(book.cut(count, piece, narrow, long));
  };
  if (onPoint) {
    // The blocks in between have only neighbours' edges; corners are counted by Euler's formula.
    const edges = 4 * across * down;
    add(sashes, edges, 'sashing', cutSize(block));
    add(stones, edges - blocks + 1, 'cornerstone', narrow);
    return { sashes, stones };
  }
  const upright = across + (frame ? 1 : -1);
  const level = down + (frame ? 1 : -1);
  add(sashes, upright * down, 'sashing between blocks', cutSize(block));
  if (cornerstones) {
    add(sashes, level * across, 'sashing between rows', cutSize(block));
    add(stones, upright * level, 'cornerstone', narrow);
  } else add(sashes, level, 'sashing between rows, in one strip', cutSize(finishedWidth));
  return { sashes, stones };
};

/**
 * The same pieces where those longer than the cloth is wide are joined from strips across it: whole ones, and an end that
 * reaches as far as is left. Nothing where none is so long, or where a seam uses up a whole strip.
 */
export const joinedPieces = <F extends Fields>(
  book: Book<F>,
  cuts: Cut[],
  cloth: Exact,
  { seam, mark }: Layout,
): Cut[] | undefined => {
  const loss = seam.mul(2);
  if (loss.gte(cloth) || cuts.every(({ length }) => exact(length).lte(cloth))) return undefined;
  return cuts.flatMap((cut) => {
    const long = exact(cut.length);
    const whole = fewest(long, cloth, loss)! - 1;
    if (!whole) return [cut];
    const left = long.sub(cloth.sub(loss).mul(whole));
    const end = most(left, least(toMark(left, mark), cloth));
    const to = `to join to ${book.l(long)}`;
    const width = exact(cut.width);
    return [
      book.cut(cut.count * whole, `${cut.piece}, whole width ${to}`, width, cloth),
      book.cut(cut.count, `${cut.piece}, end ${to}`, width, end),
    ];
  });
};

/** The squares that the setting triangles of a top on point are cut from, with their rows. */
export const settingTriangles = <F extends Fields>(
  book: Book<F>,
  { block, across, down, sashing, seam, mark }: Layout,
): {
  squares: { sideTriangles: number; sideSquare: Exact; cornerSquare: Exact };
  cuts: Cut[];
} => {
  const { n } = book;
  const sashed = sashing.gt(0);
  const sideSeam = seam.mul(exact(PATCHES.quarter.seams));
  const cornerSeam = seam.mul(exact(PATCHES.half.seams));
  const sideSquare = toMark(diagonal(block.add(sashing)).add(sideSeam), mark);
  const cornerSquare = toMark(
    diagonal(block.add(sashing.mul(2)))
      .div(2)
      .add(cornerSeam),
    mark,
  );
  const from = ['block', 'sashing', 'seam', 'mark'];
  book.row(
    'sideSquare',
    'Square for four side triangles',
    sideSquare,
    `${sashed ? `(${n(block)} + ${n(sashing)})` : n(block)} × √2 + ${n(sideSeam)}, up to the mark`,
    from,
  );
  book.row(
    'cornerSquare',
    'Square for two corner triangles',
    cornerSquare,
    `${sashed ? `(${n(block)} + 2 × ${n(sashing)})` : n(block)} ÷ √2 + ${n(cornerSeam)}, up to the mark`,
    from,
  );
  const sides = 2 * (across - 1) + 2 * (down - 1);
  book.row('sideTriangles', 'Side triangles', `${sides}`, `2 × ${across - 1} + 2 × ${down - 1} = ${sides}`, [
    'across',
    'down',
  ]);
  const cuts = [book.cut(2, 'square, cut in two for corner triangles', cornerSquare, cornerSquare)];
  if (sides)
    cuts.unshift(
      book.cut(Math.ceil(sides / 4), 'square, cut in four for side triangles', sideSquare, sideSquare),
    );
  return {
    squares: { sideTriangles: sides, sideSquare, cornerSquare },
    cuts,
  };
};
