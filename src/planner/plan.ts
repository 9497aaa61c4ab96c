import { exact, sum, upTo, wholeUp, ZERO, type Exact } from '../measure/exact.js';
import { clothBound } from './bounds.js';
import { breathe } from './breathe.js';
import type { Layout, Lot } from './fill.js';
import { gridFor, noPlan, refuse, say, type Grid, type NoPlan } from './grid.js';
import { readable, type Spot } from './readable.js';
import { searchWays } from './ways.js';

/** Equal rectangles to be cut. */
export interface CutPiece {
  /** Inches across the cloth, from selvage to selvage; seam allowances included. */
  width: Exact;
  /** Inches along the cloth. */
  height: Exact;
  /** How many of them. */
  count: number;
  /** Whether it may be turned by a quarter. A one-way print may not. */
  turn: boolean;
}

/** What is cut: cloth bought by length, or sheets (fat quarters and the like). */
export interface Cloth {
  /** Usable inches across. */
  width: Exact;
  /** Usable inches of a sheet along the cloth; left out for cloth bought by length. */
  height?: Exact | undefined;
  /**
   * The step in inches by which a shop cuts cloth. With a step, another order of cuts replaces strips across the cloth only if it
   * saves a whole step. Without one, it replaces them for any saving.
   */
  step?: Exact | undefined;
}

/** Where one piece lies, in inches from the left and the top of its sheet. Its sides are those after turning. */
export interface Placed {
  /** Its place in the list of pieces. */
  piece: number;
  turned: boolean;
  x: Exact;
  y: Exact;
  width: Exact;
  height: Exact;
}

/** A strip from edge to edge, and equal ones below it. */
export interface Strip {
  /** Inches from the top of the sheet to the first of them. */
  y: Exact;
  height: Exact;
  /** How many equal strips lie below each other. */
  times: number;
  /** What each strip gives, from the left: how many of which piece. */
  cuts: { piece: number; count: number }[];
  /** Where they lie in the first of these strips. */
  placed: Placed[];
}

/** A sheet, and equal ones. */
export interface Sheet {
  times: number;
  /** From the top, tallest first. */
  strips: Strip[];
  /** Inches along the cloth that the strips take. */
  used: Exact;
}

export interface CuttingPlan {
  ok: true;
  /** How the sheets are cut; cloth bought by length is one sheet. */
  sheets: Sheet[];
  /** Sheets needed. */
  count: number;
  /** Inches of cloth used, if it is bought by length. Otherwise the height of a sheet. */
  length: Exact;
  /** No plan can need less than this: inches of cloth, or sheets. */
  bound: Exact;
  /** Whether we have proof that less is impossible. */
  exact: boolean;
}

const MOST_LOTS = 1000;
/** How many pieces a plan places one by one. Equal strips count as one. Longer lists are cut in strips only. */
const MOST_PLACED = 5000;

/** Pieces and cloth as whole numbers on a grid. */
interface Fit {
  grid: Grid;
  width: number;
  height?: number | undefined;
  sizes: Lot[];
}

/** The tallest first, and of equal ones the line with most of them. So the order of a list does not matter. */
const tallestFirst = (a: Lot, b: Lot): number =>
  b.height - a.height || b.width - a.width || b.count - a.count;

/** The pieces on the grid, turned if they fit only that way; or why they cannot be planned. */
const fitting = (pieces: CutPiece[], cloth: Cloth): Fit | NoPlan => {
  const edges = [cloth.width, cloth.height, cloth.step].filter((size) => size !== undefined);
  const refused = refuse(
    edges,
    pieces.map(({ width, height, count }) => ({ sizes: [width, height], count })),
  );
  if (refused) return refused;
  const needed = pieces.flatMap((piece, place) => (piece.count ? [{ ...piece, place }] : []));
  const longest = sum(needed.map(({ width, height, count }) => width.add(height).mul(count)));
  const area = longest.add(1).mul(cloth.width.add(1)).valueOf();
  const lengths = [...edges, ...needed.flatMap(({ width, height }) => [width, height])];
  const grid = gridFor(lengths, Math.sqrt(Number.MAX_SAFE_INTEGER / area) / 2);
  const width = grid.down(cloth.width);
  const height = cloth.height && grid.down(cloth.height);
  const sizes: Lot[] = [];
  for (const { place, width: w, height: h, count, turn } of needed) {
    const fits = (w: Exact, h: Exact): boolean =>
      w.lte(cloth.width) && (!cloth.height || h.lte(cloth.height));
    const over = !fits(w, h);
    if (over && !(turn && fits(h, w)))
      return noPlan(
        cloth.height ? say('largerThanSheet') : say('largerThanCloth', { cloth: cloth.width }),
        place,
      );
    const across = grid.up(over ? h : w);
    const along = grid.up(over ? w : h);
    // A coarse grid would round a piece that is as large as the cloth past its edge.
    const snug = { width: Math.min(across, width), height: Math.min(along, height ?? along) };
    const rounded = snug.width < across || snug.height < along;
    sizes.push({
      piece: place,
      ...snug,
      count,
      over,
      turn: turn && !over && !rounded && !w.equals(h) && fits(h, w),
    });
  }
  return { grid, width, height, sizes: sizes.sort(tallestFirst) };
};

/**
 * Divides each size into several lots, so that a search can put them in different places: half of the pieces, half of the rest,
 * and so on. If there are many sizes, it makes fewer lots of each.
 */
const lotsOf = (sizes: Lot[]): Lot[] =>
  sizes.flatMap((size) => {
    const lots: Lot[] = [];
    for (let left = size.count; left; left -= lots.at(-1)!.count) {
      const isLast = (lots.length + 2) * sizes.length > MOST_LOTS;
      lots.push({ ...size, count: isLast ? left : Math.ceil(left / 2) });
    }
    return lots;
  });

/** How many lots that makes of a list, which tells how long a plan takes, however many pieces there are. */
export const lotsIn = (pieces: CutPiece[]): number =>
  pieces.reduce((all, { count }) => all + (count && 1 + Math.floor(Math.log2(count))), 0);

/** The least that any plan can need, on the grid. If the grid rounded the sizes up, only the area of the pieces is proof. */
const boundOf = ({ sizes, width, height, grid }: Fit, pieces: CutPiece[], cloth: Cloth): number => {
  if (grid.exact) return clothBound(sizes, width, height);
  const area = sum(
    sizes.map(({ piece, count }) => pieces[piece]!.width.mul(pieces[piece]!.height).mul(count)),
  );
  return cloth.height ? wholeUp(area.div(cloth.width.mul(cloth.height))) : grid.down(area.div(cloth.width));
};

/** A layout in inches, in the order in which a person reads it. */
const sheetsOf = (
  layout: Layout['sheets'],
  lots: Lot[],
  { grid, height }: Fit,
  pieces: CutPiece[],
  cloth: Cloth,
): Sheet[] => {
  // On a coarse grid, a piece as tall as the sheet is a little taller than the grid says.
  const tall = (along: number): Exact =>
    cloth.height && along === height ? cloth.height : grid.inches(along);
  const placedOn =
    (y: Exact) =>
    ({ piece, turned, x, y: down }: Spot): Placed => {
      const { width, height } = pieces[piece]!;
      const [w, h] = turned ? [height, width] : [width, height];
      return { piece, turned, x: grid.inches(x), y: y.add(grid.inches(down)), width: w, height: h };
    };
  return readable(layout, lots).map(({ times, strips }): Sheet => {
    let used = ZERO;
    const made = strips.map(({ height, times, spots }): Strip => {
      const y = used;
      used = y.add(tall(height).mul(times));
      const counts = new Map<number, number>();
      for (const { piece } of spots) counts.set(piece, (counts.get(piece) ?? 0) + 1);
      const cuts = Array.from(counts, ([piece, count]) => ({ piece, count }));
      return { y, height: tall(height), times, cuts, placed: spots.map(placedOn(y)) };
    });
    return { times, strips: made, used };
  });
};

/** Makes a plan step by step. Yields its progress, from 0 to 1, every few milliseconds. */
function* steps(pieces: CutPiece[], cloth: Cloth): Generator<number, CuttingPlan | NoPlan> {
  const fit = fitting(pieces, cloth);
  if ('ok' in fit) return fit;
  yield 0;
  const { sizes, width, height, grid } = fit;
  const bound = boundOf(fit, pieces, cloth);
  yield 0;
  const { step } = cloth;
  const total = sizes.reduce((all, { count }) => all + count, 0);
  const cheaper = (used: number): number =>
    total > MOST_PLACED ? 0 : step ? grid.down(upTo(grid.inches(used), step).sub(step)) : used;
  const lots = lotsOf(sizes);
  const found = lots.length ? yield* searchWays(lots, width, height, bound, cheaper) : undefined;
  const layout = found?.layout.sheets ?? [];
  const blocks = layout.flatMap(({ bands }) => bands.flatMap(({ blocks }) => blocks));
  if (blocks.reduce((all, { across, down }) => all + across * down, 0) > MOST_PLACED)
    return noPlan(say('tooManyToPlace'));
  yield 1;
  const sheets = sheetsOf(layout, lots, fit, pieces, cloth);
  const count = sheets.reduce((all, { times }) => all + times, 0);
  const length = cloth.height ?? sheets[0]?.used ?? ZERO;
  // The search may know a better bound, but sizes that were rounded up prove nothing.
  const known = grid.exact && found ? found.bound : bound;
  const least = cloth.height ? exact(known) : grid.inches(known);
  const isLeast = least.equals(cloth.height ? count : length);
  return { ok: true, sheets, count, length, bound: least, exact: isLeast };
}

/**
 * How to cut the pieces from the least cloth, or from the fewest sheets, with edge-to-edge cuts only. The plan starts with strips
 * across the cloth, unless another order of cuts saves cloth. The same list always gives the same plan. If the pieces cannot be
 * planned, the plan is a problem. Nothing is thrown.
 */
export const planCloth = (pieces: CutPiece[], cloth: Cloth): CuttingPlan | NoPlan => {
  const plan = steps(pieces, cloth);
  for (;;) {
    const { done, value } = plan.next();
    if (done) return value;
  }
};

/**
 * The same plan as `planCloth`, made a few milliseconds at a time, so that the page keeps working.
 *
 * @param signal stops the planning. The promise then rejects with the signal's reason.
 * @param onProgress is told how much is done, from 0 to 1.
 */
export const planClothAsync = async (
  pieces: CutPiece[],
  cloth: Cloth,
  { signal, onProgress }: { signal?: AbortSignal; onProgress?: (done: number) => void } = {},
): Promise<CuttingPlan | NoPlan> => {
  const plan = steps(pieces, cloth);
  for (;;) {
    signal?.throwIfAborted();
    const { done, value } = plan.next();
    if (done) return value;
    onProgress?.(value);
    await breathe();
  }
};

/** Every piece of a plan, one by one, on numbered sheets; at most `most` of them. */
export const everyPiece = (plan: CuttingPlan, most = MOST_PLACED): (Placed & { sheet: number })[] => {
  const all: (Placed & { sheet: number })[] = [];
  let sheet = 0;
  for (const { times, strips } of plan.sheets)
    for (let copy = 0; copy < times && all.length < most; copy++, sheet++)
      for (const { placed, times, height } of strips)
        for (let i = 0; i < times && all.length < most; i++)
          for (const spot of placed)
            if (all.length < most) all.push({ ...spot, sheet, y: spot.y.add(height.mul(i)) });
  return all;
};
