import { sum, wholeUp, type Exact } from '../measure/exact.js';
import { loadBound } from './bounds.js';
import { gridFor, refuse, type NoPlan } from './grid.js';

/** Equal lengths to be cut. */
export interface StockPiece {
  /** Inches, joins and seams included. */
  length: Exact;
  /** How many of them. */
  count: number;
}

/** Stock lengths that are all cut alike. */
export interface StockCuts {
  /** What each gives, longest first: how many of which piece (its place in the list that was asked for). */
  cuts: { piece: number; count: number }[];
  /** How many stock lengths are cut so. */
  times: number;
  /** Inches of each that are used. */
  used: Exact;
  /** Inches of each that are left over. */
  left: Exact;
}

export interface StockPlan {
  ok: true;
  /** Stock lengths needed. */
  count: number;
  /** How they are cut, in the order of cutting. */
  stocks: StockCuts[];
  /** Whether fewer are proven impossible. */
  exact: boolean;
  /** No plan can do with fewer than this. */
  bound: number;
}

/** Stock lengths cut alike: how many of each kind, the kinds going from longest to shortest. */
interface Run {
  pattern: number[];
  times: number;
}

const stocksIn = (runs: Run[]): number => runs.reduce((count, { times }) => count + times, 0);

/** Steps before a search gives up: a count, so that every machine finds the same plan. */
const EFFORT = 50_000;
/** Patterns looked at for each stock length of a greedy plan; the best plan counts, the plainest of equals. */
const LOOKS = [1, 300];
/** How many more than the bound are searched for before the greedy plan is taken. */
const MOST_SEARCHES = 3;
/** Deeper than any plan a person cuts, and well within a browser's stack. */
const DEEPEST = 1500;

/**
 * The longest piece left and what fills its stock length best, repeated for as long as the counts last. One look only
 * takes the longest that fits each time.
 */
const fillGreedily = (sizes: number[], counts: number[], stock: number, looks: number): Run[] => {
  const left = [...counts];
  const runs: Run[] = [];
  for (;;) {
    const longest = left.findIndex((count) => count > 0);
    if (longest < 0) return runs;
    let pattern: number[] = [];
    let [least, looked] = [Infinity, 0];
    const extend = (taken: number[], room: number): void => {
      const kind = taken.length;
      if (kind === sizes.length) {
        looked++;
        if (room < least) [least, pattern] = [room, taken];
        return;
      }
      let take = Math.min(left[kind]!, Math.floor(room / sizes[kind]!));
      for (; take >= (kind === longest ? 1 : 0) && least && looked < looks; take--)
        extend([...taken, take], room - take * sizes[kind]!);
    };
    extend([], stock);
    const times = Math.min(
      ...pattern.flatMap((take, kind) => (take ? [Math.floor(left[kind]! / take)] : [])),
    );
    pattern.forEach((take, kind) => (left[kind]! -= take * times));
    runs.push({ pattern, times });
  }
};

/**
 * Looks for a plan with no more than `most` stock lengths. Put in order, longer pieces first, an optimal plan needs no
 * pattern that has room for a piece of a later one: so only full patterns are tried, each no greater than the one before.
 */
const search = (
  sizes: number[],
  counts: number[],
  stock: number,
  most: number,
): Run[] | 'none' | 'gave up' => {
  const left = [...counts];
  const runs: Run[] = [];
  let waste = most * stock - sizes.reduce((total, size, kind) => total + size * counts[kind]!, 0);
  let stocks = most;
  let effort = EFFORT;
  let gaveUp = false;

  const extend = (pattern: number[], room: number, depth: number): boolean => {
    gaveUp ||= effort-- <= 0 || depth > DEEPEST;
    const kind = pattern.length;
    const before = runs.at(-1)?.pattern;
    const tied = before && pattern.every((take, other) => take === before[other]);
    if (kind === sizes.length) return !tied && use(pattern, room, depth);
    const longest = left.findIndex((count) => count > 0) === kind;
    let take = Math.min(left[kind]!, Math.floor(room / sizes[kind]!), tied ? before[kind]! : Infinity);
    for (; take >= (longest ? 1 : 0) && !gaveUp; take--)
      if (extend([...pattern, take], room - take * sizes[kind]!, depth + 1)) return true;
    return false;
  };

  const use = (pattern: number[], room: number, depth: number): boolean => {
    if (room > waste || sizes.some((size, kind) => size <= room && left[kind]! > pattern[kind]!))
      return false;
    const longest = pattern.findIndex((take) => take > 0);
    let times = room ? Math.min(stocks, Math.floor(waste / room)) : stocks;
    pattern.forEach((take, kind) => take && (times = Math.min(times, Math.floor(left[kind]! / take))));
    const cut = (times: number): void => {
      pattern.forEach((take, kind) => (left[kind]! -= take * times));
      stocks -= times;
      waste -= room * times;
    };
    for (; times > 0 && !gaveUp; times--) {
      cut(times);
      runs.push({ pattern, times });
      if (left.every((count) => !count)) return true;
      if (left[longest]! <= stocks * pattern[longest]! && extend([], stock, depth + 1)) return true;
      runs.pop();
      cut(-times);
    }
    return false;
  };

  if (extend([], stock, 0)) return runs;
  return gaveUp ? 'gave up' : 'none';
};

/**
 * The least number of stock lengths (cloth strips, bolts) from which the pieces can be cut, and what is cut from each.
 * Proven least where the search is small enough; otherwise the best plan found, with a bound below which none can go.
 * The same pieces always give the same plan. Pieces that cannot be cut give a message; nothing is thrown.
 *
 * @param pieces a length may appear more than once; each keeps its own place in the plan.
 * @param stockLength inches, the same for every stock length.
 */
export const planStock = (pieces: StockPiece[], stockLength: Exact): StockPlan | NoPlan => {
  const refused = refuse(
    [stockLength],
    pieces.map(({ length, count }) => ({ sizes: [length], count })),
  );
  if (refused) return refused;
  const tooLong = pieces.findIndex(({ length, count }) => count && length.gt(stockLength));
  if (tooLong >= 0)
    return {
      ok: false,
      message:
        'This is longer than what it is cut from. Join it from shorter pieces, like 80 in from two of 40 1/4 in.',
      piece: tooLong,
    };
  const total = sum(pieces.map(({ length, count }) => length.mul(count)));
  const lengths = pieces.flatMap(({ length, count }) => (count ? [length] : []));
  const grid = gridFor(
    [stockLength, ...lengths],
    Number.MAX_SAFE_INTEGER / total.add(stockLength).mul(4).valueOf(),
  );
  const stock = grid.down(stockLength);

  const kinds = new Map<number, { piece: number; count: number }[]>();
  pieces.forEach(({ length, count }, piece) => {
    if (!count) return;
    // a coarse grid could round a piece past the stock length that it just fits
    const size = Math.min(grid.up(length), stock);
    kinds.set(size, [...(kinds.get(size) ?? []), { piece, count }]);
  });
  const sizes = [...kinds.keys()].sort((a, b) => b - a);
  const queues = sizes.map((size) => kinds.get(size)!);
  const counts = queues.map((queue) => queue.reduce((all, { count }) => all + count, 0));

  let runs = LOOKS.map((looks) => fillGreedily(sizes, counts, stock, looks)).reduce((best, other) =>
    stocksIn(other) < stocksIn(best) ? other : best,
  );
  let bound = wholeUp(total.div(stockLength));
  if (grid.exact && sizes.length) {
    bound = Math.max(bound, loadBound(sizes, counts, stock));
    let proven = true;
    for (let most = bound, last = bound + MOST_SEARCHES; most < Math.min(stocksIn(runs), last); most++) {
      const found = search(sizes, counts, stock, most);
      if (Array.isArray(found)) runs = found;
      else if (found === 'gave up') proven = false;
      else if (proven) bound = most + 1;
    }
  }

  /** Hands the pieces of each size, in the order asked for, to a run of stock lengths cut alike. */
  const deal = ({ pattern, times }: Run): StockCuts[] => {
    const dealt: StockCuts[] = [];
    for (let repeats = times; times > 0; times -= repeats) {
      repeats = times;
      const shares = pattern.flatMap((take, kind) => {
        const parts: { from: { piece: number; count: number }; count: number }[] = [];
        for (const from of queues[kind]!) {
          const count = Math.min(take, from.count);
          if (!count) continue;
          repeats = Math.min(repeats, count === take && !parts.length ? Math.floor(from.count / count) : 1);
          parts.push({ from, count });
          take -= count;
        }
        return parts;
      });
      shares.forEach(({ from, count }) => (from.count -= count * repeats));
      const cuts = shares.map(({ from, count }) => ({ piece: from.piece, count }));
      const used = sum(cuts.map(({ piece, count }) => pieces[piece]!.length.mul(count)));
      dealt.push({ cuts, times: repeats, used, left: stockLength.sub(used) });
    }
    return dealt;
  };

  const count = stocksIn(runs);
  return { ok: true, count, stocks: runs.flatMap(deal), exact: count === bound, bound };
};
