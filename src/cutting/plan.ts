import { exact, sum, upTo, wholeUp, ZERO, type Exact } from '../measure/exact.js';
import { clothBound } from './bounds.js';
import type { Layout, Lot } from './fill.js';
import { gridFor, refuse, type Grid, type NoPlan } from './grid.js';
import { search, type Found } from './search.js';

/** Equal rectangles to be cut. */
export interface CutPiece {
  /** Inches across the cloth, from selvage to selvage; seam allowances included. */
  width: Exact;
  /** Inches along the cloth. */
  height: Exact;
  /** How many of them. */
  count: number;
  /** Whether it may be turned by a quarter; a one-way print forbids it. */
  turn: boolean;
}

/** What is cut: cloth bought by length, or sheets (fat quarters and the like). */
export interface Cloth {
  /** Usable inches across. */
  width: Exact;
  /** Usable inches of a sheet along the cloth; left out for cloth bought by length. */
  height?: Exact | undefined;
  /**
   * Inches in which a shop cuts cloth bought by length. Strips across the cloth are then given up only for cuts in
   * another order that save a whole step; left out, for any saving.
   */
  step?: Exact | undefined;
}

/** Where one piece lies: inches from the left and the top of its sheet, as turned. */
export interface Placed {
  /** Its place in the list that was asked for. */
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
  /** What each gives: how many of which piece, from the left. */
  cuts: { piece: number; count: number }[];
  /** Where they lie in the first of these strips. */
  placed: Placed[];
}

/** A sheet, and others cut alike. */
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
  /** Inches of cloth used, where it is bought by length; otherwise a sheet's height. */
  length: Exact;
  /** No plan can do with less: inches of cloth, or sheets. */
  bound: Exact;
  /** Whether less is proven impossible. */
  exact: boolean;
  /** Whether every cut can be made in the usual order: strips across the cloth, pieces from strips, then trims. */
  stripsFirst: boolean;
}

/** Lots that a search moves about: single pieces where they are few, else as many of each size as its share of these. */
const LOTS = 256;
/** Sizes in a list. */
const MOST_SIZES = 2000;
/** Pieces that a plan draws one by one, counting strips cut alike as one. */
const MOST_DRAWN = 20_000;

interface Fitting {
  pieces: CutPiece[];
  cloth: Cloth;
  grid: Grid;
  width: number;
  height: number | undefined;
  /** The pieces as they fit: turned where they only fit so. */
  sizes: { piece: number; width: number; height: number; count: number; turn: boolean; turned: boolean }[];
}

/** The pieces and the cloth on one grid, or why they cannot be planned. */
const fitting = (pieces: CutPiece[], cloth: Cloth): Fitting | NoPlan => {
  const refused = refuse(
    [cloth.width, cloth.height, cloth.step].filter((size) => size !== undefined),
    pieces.map(({ width, height, count }) => ({ sizes: [width, height], count })),
  );
  if (refused) return refused;
  if (pieces.length > MOST_SIZES)
    return {
      ok: false,
      message: 'That is more than 2000 different pieces. Plan fewer at a time, like 1000.',
    };
  const fits = (width: Exact, height: Exact): boolean =>
    width.lte(cloth.width) && (!cloth.height || height.lte(cloth.height));
  const needed = pieces.filter(({ count }) => count);
  const lengths = [
    cloth.width,
    ...(cloth.height ? [cloth.height] : []),
    ...needed.flatMap((piece) => [piece.width, piece.height]),
  ];
  const longest = sum(needed.map(({ width, height, count }) => width.add(height).mul(count)));
  const grid = gridFor(
    lengths,
    Math.sqrt(Number.MAX_SAFE_INTEGER / longest.add(1).mul(cloth.width.add(1)).valueOf()) / 2,
  );
  const width = grid.down(cloth.width);
  const height = cloth.height && grid.down(cloth.height);
  const sizes: Fitting['sizes'] = [];
  for (const [piece, { width: w, height: h, count, turn }] of pieces.entries()) {
    if (!count) continue;
    const turned = !fits(w, h);
    if (turned && !(turn && fits(h, w)))
      return {
        ok: false,
        message: `This does not fit on the cloth, ${cloth.width.toFraction(true)} in wide. Join it from smaller pieces, or give wider cloth, like 108 in.`,
        piece,
      };
    const [a, b] = turned ? [h, w] : [w, h];
    // on a coarse grid, a piece as wide as the cloth would be rounded past its edge
    const snug = { width: Math.min(grid.up(a), width), height: Math.min(grid.up(b), height ?? Infinity) };
    const rounded = snug.width < grid.up(a) || snug.height < grid.up(b);
    sizes.push({
      piece,
      ...snug,
      count,
      turn: turn && !turned && !rounded && !w.equals(h) && fits(h, w),
      turned,
    });
  }
  return { pieces, cloth, grid, width, height, sizes };
};

const lotsOf = ({ sizes }: Fitting): Lot[] => {
  const total = sizes.reduce((all, { count }) => all + count, 0);
  return sizes.flatMap(({ piece, width, height, count, turn }) => {
    const parts = Math.min(count, Math.max(1, Math.round((count * LOTS) / Math.max(LOTS, total))));
    return Array.from({ length: parts }, (_, i) => ({
      piece,
      width,
      height,
      turn,
      count: Math.floor((count + i) / parts),
    }));
  });
};

/** A strip on the grid; its spots are where single pieces lie, from the strip's own top. */
interface GridStrip {
  height: number;
  times: number;
  spots: { piece: number; turned: boolean; x: number; y: number; bottom: number }[];
  /** Equal for strips that are cut alike. */
  key: string;
}

/** Equal things become one, with how often it comes; in the order of their first. */
const gather = <T extends { times: number; key: string }>(things: T[]): T[] => {
  const byKey = new Map<string, T>();
  for (const thing of things) {
    const same = byKey.get(thing.key);
    byKey.set(thing.key, same ? { ...same, times: same.times + thing.times } : thing);
  }
  return [...byKey.values()];
};

/** Each band's pieces one by one, cut apart wherever a cut across meets none of them. */
const stripsOf = (
  sheet: Layout['sheets'][number],
  lots: Lot[],
  turnedAlready: (piece: number) => boolean,
): GridStrip[] => {
  const strips = sheet.bands.flatMap(({ blocks, times }): GridStrip[] => {
    const spots = blocks
      .flatMap(({ lot, turned, x, y, across, down }) => {
        const { piece, width, height } = lots[lot]!;
        const [w, h] = turned ? [height, width] : [width, height];
        return Array.from({ length: across * down }, (_, i) => {
          const top = y + Math.floor(i / across) * h;
          return {
            piece,
            turned: turned !== turnedAlready(piece),
            x: x + (i % across) * w,
            y: top,
            bottom: top + h,
          };
        });
      })
      .sort((a, b) => a.y - b.y || a.x - b.x);
    const parts: (typeof spots)[] = [];
    let end = 0;
    for (const spot of spots) {
      if (!parts.length || spot.y >= end) parts.push([]);
      parts.at(-1)!.push(spot);
      end = Math.max(end, spot.bottom);
    }
    return parts.map((part) => {
      const top = part[0]!.y;
      const moved = part
        .map((spot) => ({ ...spot, y: spot.y - top, bottom: spot.bottom - top }))
        .sort((a, b) => a.x - b.x || a.y - b.y);
      const height = Math.max(...moved.map(({ bottom }) => bottom));
      return { height, times, spots: moved, key: JSON.stringify(moved) };
    });
  });
  return gather(strips.sort((a, b) => b.height - a.height));
};

const toPlan = (fit: Fitting, lots: Lot[], found: Found | undefined, least: number): CuttingPlan | NoPlan => {
  const { pieces, grid, height } = fit;
  const turnedAlready = new Set(fit.sizes.filter(({ turned }) => turned).map(({ piece }) => piece));
  const sheets = gather(
    (found?.layout.sheets ?? []).map(({ bands, times }) => {
      const strips = stripsOf({ bands, times }, lots, (piece) => turnedAlready.has(piece));
      return { times, strips, key: strips.map(({ key, times }) => `${times}×${key}`).join() };
    }),
  );
  if (
    sheets.reduce((all, { strips }) => all + strips.reduce((in_, { spots }) => in_ + spots.length, 0), 0) >
    MOST_DRAWN
  )
    return {
      ok: false,
      message: 'That is too many pieces to draw one by one. Plan fewer at a time, like 1000.',
    };
  const drawn = sheets.map(({ times, strips }): Sheet => {
    let top = 0;
    return {
      times,
      strips: strips.map(({ height, times, spots }): Strip => {
        const y = top;
        top += height * times;
        const counts = new Map<number, number>();
        for (const { piece } of spots) counts.set(piece, (counts.get(piece) ?? 0) + 1);
        return {
          y: grid.inches(y),
          height: grid.inches(height),
          times,
          cuts: Array.from(counts, ([piece, count]) => ({ piece, count })),
          placed: spots.map((spot) => {
            const { width, height } = pieces[spot.piece]!;
            const [w, h] = spot.turned ? [height, width] : [width, height];
            const { piece, turned } = spot;
            return { piece, turned, x: grid.inches(spot.x), y: grid.inches(y + spot.y), width: w, height: h };
          }),
        };
      }),
      used: grid.inches(top),
    };
  });
  const count = drawn.reduce((all, { times }) => all + times, 0);
  const length = fit.cloth.height ?? drawn[0]?.used ?? ZERO;
  const bound = height === undefined ? grid.inches(least) : exact(least);
  const used = height === undefined ? length : exact(count);
  return {
    ok: true,
    sheets: drawn,
    count,
    length,
    bound,
    exact: used.equals(bound),
    stripsFirst: found?.inStrips ?? true,
  };
};

/** A plan step by step: yields its progress from 0 to 1 every few milliseconds. */
function* steps(pieces: CutPiece[], cloth: Cloth): Generator<number, CuttingPlan | NoPlan> {
  const fit = fitting(pieces, cloth);
  if ('ok' in fit) return fit;
  const lots = lotsOf(fit);
  const { sizes, width, height, grid } = fit;
  // sizes that were rounded up prove nothing: then only the pieces' own area does
  const area = sum(
    sizes.map(({ piece, count }) => pieces[piece]!.width.mul(pieces[piece]!.height).mul(count)),
  );
  const least = grid.exact
    ? clothBound(sizes, width, height)
    : height === undefined
      ? grid.down(area.div(cloth.width))
      : wholeUp(area.div(cloth.width.mul(cloth.height!)));
  const { step } = cloth;
  const cheaper = (used: number): number =>
    step ? grid.down(upTo(grid.inches(used), step).sub(step)) : used;
  yield 0;
  const found = lots.length ? yield* search(lots, width, height, least, cheaper) : undefined;
  return toPlan(fit, lots, found, least);
}

/**
 * How to cut the pieces from the least cloth, or from the fewest sheets, with edge-to-edge cuts only. Strips across the
 * cloth come first unless another order of cutting saves cloth. The same list always gives the same plan. Pieces that
 * cannot be planned give a message; nothing is thrown.
 */
export const planCloth = (pieces: CutPiece[], cloth: Cloth): CuttingPlan | NoPlan => {
  const plan = steps(pieces, cloth);
  for (;;) {
    const { done, value } = plan.next();
    if (done) return value;
  }
};

/** Lets the page draw and answer before the search goes on; unlike a timer, it isn't slowed in a hidden page. */
const breathe = (): Promise<void> =>
  new Promise((done) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      done();
    };
    port2.postMessage(0);
  });

/**
 * The same plan as `planCloth`, made a few milliseconds at a time so that a page stays alive.
 *
 * @param signal stops the planning: the promise is then rejected with the signal's reason.
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

/** Every piece of a plan, one by one, on numbered sheets; at most so many. */
export const everyPiece = (plan: CuttingPlan, most = MOST_DRAWN): (Placed & { sheet: number })[] => {
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
