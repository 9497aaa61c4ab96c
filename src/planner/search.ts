import { leastOfFew } from './few.js';
import { Filler, type Layout, type Lot, type Recipe } from './fill.js';

/** How long a search goes on: how many lots it tries in how many gaps. It is a count, not a time, so every machine finds the same plan. */
const EFFORT = { least: 600_000, perLot: 100_000, most: 20_000_000 };
/** Work between two pauses: a few milliseconds. */
const SLICE = 200_000;
/** Shares of the effort: for plans in strips, for plans cut in any order, and for making the plan tidier. */
const SHARE = { strips: 0.15, free: 0.75, tidy: 0.1 };

/** A few lots are tidy after fewer tries. These tries are most of the cost of a short list. */
const FEW_LOTS = 8;
const TIDY_PER_LOT = 10_000;
/** The share of the tries for a tidier plan after which it stops, if none of them made the plan tidier. */
const TIDY_PATIENCE = 1 / 3;

/** A seeded generator (xorshift), so that the same list always gives the same plan. */
const dice = (): ((sides: number) => number) => {
  let seed = 12345;
  return (sides) => {
    seed ^= seed << 13;
    seed ^= seed >>> 17;
    seed ^= seed << 5;
    return Math.floor(((seed >>> 0) / 2 ** 32) * sides);
  };
};

const copy = ({ order, turned, lengthwise }: Recipe): Recipe => ({
  order: [...order],
  turned: [...turned],
  lengthwise: [...lengthwise],
});

/** A small change of a recipe. */
interface Change {
  undo: () => void;
  /** Whether the layout is surely the same as before. */
  isIdle: boolean;
}

/** Changes a recipe a little. */
const vary = (
  { order, turned, lengthwise }: Recipe,
  roll: (sides: number) => number,
  lots: Lot[],
  inStrips: boolean,
): Change => {
  const kind = roll(10);
  const a = roll(order.length);
  const b = roll(order.length);
  if (kind < 3) {
    const swap = (): void => void ([order[a], order[b]] = [order[b]!, order[a]!]);
    swap();
    return { undo: swap, isIdle: a === b };
  }
  if (kind < 6) {
    const move = (from: number, to: number): void => void order.splice(to, 0, ...order.splice(from, 1));
    move(a, b);
    return { undo: () => move(b, a), isIdle: a === b };
  }
  const bits = kind < 8 ? turned : lengthwise;
  const flip = (): void => void (bits[a] = !bits[a]);
  flip();
  // Strips across the cloth are never cut lengthwise first.
  return { undo: flip, isIdle: kind < 8 ? !lots[a]!.turn : inStrips };
};

/** Good orders to start from: each way of turning the pieces, largest or tallest first. */
const starts = (lots: Lot[], width: number): Recipe[] => {
  const clothFor = (across: number, tall: number): number =>
    across > width ? Infinity : tall / Math.floor(width / across);
  const ways: ((lot: Lot) => boolean)[] = [
    ({ width, height }) => width < height,
    ({ width, height }) => width > height,
    (lot) => clothFor(lot.height, lot.width) < clothFor(lot.width, lot.height),
  ];
  return ways.flatMap((way) => {
    const turned = lots.map((lot) => lot.turn && way(lot));
    const tall = lots.map(({ width, height }, i) => (turned[i] ? width : height));
    const by = (key: (i: number) => number): Recipe => ({
      order: lots.map((_, i) => i).sort((a, b) => key(b) - key(a)),
      turned,
      lengthwise: lots.map(() => false),
    });
    return [by((i) => lots[i]!.width * lots[i]!.height), by((i) => tall[i]!)];
  });
};

/**
 * Fewer strip heights come first, because the reader measures each height once. Then come fewer different strips, then fewer
 * pieces that are trimmed or stacked in their strip.
 */
const untidiness = ({ sheets }: Layout, lots: Lot[]): number => {
  const heights = new Set<number>();
  const kinds = new Set<string>();
  let trims = 0;
  for (const { bands } of sheets)
    for (const { height, times, blocks } of bands) {
      heights.add(height);
      const counts: number[] = [height];
      for (const { lot, turned, across, down } of blocks) {
        const piece = lots[lot]!;
        const place = 2 * piece.piece + (turned ? 2 : 1);
        counts[place] = (counts[place] ?? 0) + across * down;
        if ((turned ? piece.width : piece.height) < height) trims += across * down * times;
      }
      kinds.add(counts.join());
    }
  return (heights.size * 1e4 + kinds.size) * 1e6 + trims;
};

/** A plan on the grid, and the least that any plan can need. */
export interface Found {
  layout: Layout;
  bound: number;
}

type Dice = ReturnType<typeof dice>;
/** Yields the progress, if enough work was done since the last time. */
type Pause = () => Generator<number, void>;

const pauseEvery = (filler: Filler, total: number): Pause => {
  let shown = 0;
  return function* () {
    if (filler.effort - shown < SLICE) return;
    shown = filler.effort;
    yield Math.min(1, shown / total);
  };
};

/** A layout, and the recipe that gave it. */
interface Made {
  layout: Layout;
  recipe: Recipe;
}

/** A layout, and the effort that it took. */
interface Tried {
  layout: Layout;
  cost: number;
}

/** Lays out a recipe. `same` is a layout that is surely the same: it costs as much, so that the search goes on in the same way. */
const tryOut = (
  filler: Filler,
  recipe: Recipe,
  within: number,
  inStrips: boolean,
  same: Tried | undefined,
): Tried => {
  if (same) {
    filler.effort += same.cost;
    return same;
  }
  const before = filler.effort;
  const layout = filler.layOut(recipe, within, inStrips);
  return { layout, cost: filler.effort - before };
};

/** The best layout in strips from one of these recipes. */
function* bestOf(recipes: Recipe[], filler: Filler, pause: Pause): Generator<number, Made> {
  let best: Made | undefined;
  for (const recipe of recipes) {
    const layout = filler.layOut(recipe, Number.MAX_SAFE_INTEGER, true);
    if (!best || layout.used < best.layout.used) best = { layout, recipe };
    yield* pause();
  }
  return best!;
}

/** Makes a layout tidier without using more. Changes the recipe that gave it. */
function* tidy(
  best: { layout: Layout; inStrips: boolean },
  recipe: Recipe,
  lots: Lot[],
  filler: Filler,
  most: number,
  roll: Dice,
  pause: Pause,
): Generator<number, Layout> {
  let { layout } = best;
  let now = untidiness(layout, lots);
  // Pieces of one size in one direction give full strips and one that is not full. Nothing is tidier.
  if (lots.every(({ piece, turn }) => !turn && piece === lots[0]!.piece)) return layout;
  let patient = filler.effort + most * TIDY_PATIENCE;
  /** What the recipe gives within the cloth of the layout. */
  let kept: Tried | undefined;
  const untidinessOf = (tried: Tried): number => {
    if (tried === kept) return now;
    return tried.layout.unplaced ? Infinity : untidiness(tried.layout, lots);
  };
  for (const end = filler.effort + most; filler.effort < Math.min(end, patient);) {
    const { undo, isIdle } = vary(recipe, roll, lots, best.inStrips);
    const tried = tryOut(filler, recipe, layout.used, best.inStrips, isIdle ? kept : undefined);
    const untidy = untidinessOf(tried);
    if (untidy > now) undo();
    else {
      if (untidy < now) patient = filler.effort + most * TIDY_PATIENCE;
      // Within less cloth the same recipe may give another layout.
      kept = tried.layout.used === layout.used ? tried : undefined;
      now = untidy;
      layout = tried.layout;
    }
    yield* pause();
  }
  return layout;
}

/**
 * Looks for the layout that uses least. It keeps a plan in strips, unless one with another order of cuts uses less.
 * Yields its progress from 0 to 1 every few milliseconds.
 *
 * @param height of a sheet; cloth bought by length has none.
 * @param bound the least that any layout can need, in steps of the grid or in sheets.
 * @param cheaper how much another order of cuts may use at most to be worth it, if strips use `used`.
 * @param worth the share of the usual effort that it may take.
 */
export function* search(
  lots: Lot[],
  width: number,
  height: number | undefined,
  bound: number,
  cheaper: (used: number) => number,
  worth = 1,
): Generator<number, Found> {
  const filler = new Filler(lots, width, height);
  const roll = dice();
  const total = worth * Math.min(EFFORT.most, EFFORT.least + EFFORT.perLot * lots.length);
  const pause = pauseEvery(filler, total);

  const recipes = starts(lots, width);
  yield 0;
  const { layout, recipe: start } = yield* bestOf(recipes, filler, pause);
  let recipe = start;
  /** The best so far, and whether it starts with strips across the cloth. */
  let found = { layout, inStrips: true };

  const useLess = function* (inStrips: boolean, share: number): Generator<number, void> {
    const by = copy(recipe);
    const aim = (): number => found.layout.used - Math.max(1, Math.floor((found.layout.used - bound) / 16));
    let goal = inStrips ? aim() : Math.min(aim(), cheaper(found.layout.used));
    /** What the recipe gives within the goal, if it does not place all pieces. */
    let kept: Tried | undefined;
    for (const end = filler.effort + total * share; goal >= bound && filler.effort < end;) {
      const { undo, isIdle } = vary(by, roll, lots, inStrips);
      const tried = tryOut(filler, by, goal, inStrips, isIdle ? kept : undefined);
      const { layout } = tried;
      const now = kept?.layout.unplaced ?? Infinity;
      if (!layout.unplaced) {
        found = { layout, inStrips };
        recipe = copy(by);
        goal = aim();
        kept = undefined;
      } else if (layout.unplaced <= now + (filler.area * 0.002 * roll(1000) * roll(1000)) / 1e6) kept = tried;
      else undo();
      yield* pause();
    }
  };

  yield* useLess(true, SHARE.strips);
  const few =
    found.layout.used > bound
      ? yield* leastOfFew(lots, width, height, found.layout.used, Math.min(1, filler.effort / total))
      : undefined;
  if (few) bound = few.used;
  else yield* useLess(false, SHARE.free);
  if (few && few.used < found.layout.used && few.used <= cheaper(found.layout.used))
    return { layout: few, bound };

  const tidying = lots.length > FEW_LOTS ? total * SHARE.tidy : lots.length * TIDY_PER_LOT;
  return { layout: yield* tidy(found, recipe, lots, filler, tidying, roll, pause), bound };
}
