import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exact, sum } from '../../src/measure/exact.js';
import { planStock, type StockPiece, type StockPlan } from '../../src/cutting/stock.js';

const pieces = (...list: [string | number, number][]): StockPiece[] =>
  list.map(([length, count]) => ({ length: exact(length), count }));

const plan = (list: StockPiece[], stock: string | number): StockPlan => {
  const found = planStock(list, exact(stock));
  if (!found.ok) throw new Error(found.message);
  return found;
};

/** Lays the plan out again: every piece that was asked for, nothing past the end of a stock length. */
const faults = (list: StockPiece[], stock: string | number, { stocks, count }: StockPlan): string[] => {
  const cut = list.map(() => 0);
  const found: string[] = [];
  for (const { cuts, times, used, left } of stocks) {
    const length = sum(cuts.map(({ piece, count }) => list[piece]!.length.mul(count)));
    if (!length.equals(used) || !used.add(left).equals(exact(stock)) || left.lt(0))
      found.push(`uses ${length.toFraction()}`);
    cuts.forEach(({ piece, count }) => (cut[piece]! += count * times));
  }
  list.forEach((piece, i) => piece.count !== cut[i] && found.push(`piece ${i}: ${cut[i]} of ${piece.count}`));
  if (stocks.reduce((all, { times }) => all + times, 0) !== count) found.push('stock lengths miscounted');
  return found;
};

/** Tries every way of putting single pieces into stock lengths: slow, and with nothing in common with the planner. */
const leastByTrying = (lengths: number[], stock: number): number => {
  let least = lengths.length;
  const put = (next: number, rooms: number[]): void => {
    if (rooms.length >= least) return;
    if (next === lengths.length) {
      least = rooms.length;
      return;
    }
    const filled = (at: number): number[] =>
      rooms.map((room, i) => (i === at ? room - lengths[next]! : room));
    rooms.forEach((room, i) => room >= lengths[next]! && put(next + 1, filled(i)));
    put(next + 1, [...rooms, stock - lengths[next]!]);
  };
  put(0, []);
  return least;
};

describe('stock lengths', () => {
  test('as few as trying every arrangement finds', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 10, max: 40 }),
        fc.array(fc.tuple(fc.double({ min: 0.02, max: 1, noNaN: true }), fc.integer({ min: 1, max: 3 })), {
          minLength: 1,
          maxLength: 4,
        }),
        (stock, shares) => {
          const lengths = shares.map(([share]) => Math.max(1, Math.round(share * stock)));
          const list = lengths.map((length, i) => ({ length: exact(length, 4), count: shares[i]![1] }));
          const found = planStock(list, exact(stock, 4));
          if (!found.ok) throw new Error(found.message);
          expect(faults(list, `${stock}/4`, found)).toEqual([]);
          expect(found.exact).toBe(true);
          expect(found.count).toBe(
            leastByTrying(
              lengths.flatMap((length, i) => Array<number>(shares[i]![1]).fill(length)),
              stock,
            ),
          );
        },
      ),
      { numRuns: 500 },
    );
  });

  test('any list is cut whole, and never from fewer than the bound', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            length: fc.tuple(
              fc.integer({ min: 1, max: 4000 }),
              fc.constantFrom(1, 3, 7, 8, 127, 1000, 999983),
            ),
            count: fc.integer({ min: 0, max: 500 }),
          }),
          { maxLength: 12 },
        ),
        (entries) => {
          const list = entries.map(({ length: [n, d], count }) => ({
            length: exact(Math.min(n, 40 * d), d),
            count,
          }));
          const found = plan(list, 40);
          expect(faults(list, 40, found)).toEqual([]);
          expect(found.count).toBeGreaterThanOrEqual(found.bound);
          expect(found.exact).toBe(found.count === found.bound);
          expect(
            sum(list.map(({ length, count }) => length.mul(count))).lte(exact(40).mul(found.count)),
          ).toBe(true);
          expect(planStock(list, exact(40))).toEqual(found);
        },
      ),
    );
  });

  test('longest first is not always best, and the search finds better', () => {
    // Geometry: 4 + 3 + 3 fills 10 twice; longest first would need three: 4 + 4, 3 + 3 + 3, 3.
    expect(plan(pieces([4, 2], [3, 4]), 10)).toMatchObject({ count: 2, exact: true });
  });

  test('pieces just over half a stock length need one each, however short their sum', () => {
    // Geometry: no two of 20 1/8 in fit into 40 in, though 79 of them are less than 40 stock lengths' inches.
    expect(plan(pieces(['20 1/8', 79]), 40)).toMatchObject({ count: 79, bound: 79, exact: true });
    // Geometry: two of 13 1/2 in fit, three do not.
    expect(plan(pieces(['13 1/2', 101]), 40)).toMatchObject({ count: 51, exact: true });
  });

  test('a million equal lengths from bolts', () => {
    // Geometry: a bolt of 15 yd = 540 in holds 19 of 28 in; 1,000,000 / 19 = 52,631 and 11 over.
    const found = plan(pieces([28, 1_000_000]), 540);
    expect(found).toMatchObject({ count: 52_632, exact: true });
    expect(found.stocks.map(({ times, cuts }) => [times, cuts[0]!.count])).toEqual([
      [52_631, 19],
      [1, 11],
    ]);
  });

  test('equal lengths asked for apart stay apart', () => {
    const list = pieces([10, 3], [10, 2], [20, 1]);
    const found = plan(list, 40);
    expect(faults(list, 40, found)).toEqual([]);
    expect(found.count).toBe(2);
  });

  test('lengths too fine for whole steps are never short', () => {
    // Geometry: three of 40/3 in are exactly 40 in; a little more than that no longer fits.
    expect(plan(pieces(['40/3', 3]), 40).count).toBe(1);
    const primes = pieces(['9999/999983', 1], ['7/1000003', 1], ['40', 1], ['13/999979', 1]);
    expect(faults(primes, 40, plan(primes, 40))).toEqual([]);
    const just = pieces(['119999999/3000000', 1], ['1/999999937', 1]);
    expect(faults(just, 40, plan(just, 40))).toEqual([]);
  });

  test('nothing to cut needs nothing', () => {
    expect(plan([], 40)).toEqual({ ok: true, count: 0, stocks: [], exact: true, bound: 0 });
    expect(plan(pieces([5, 0]), 40).count).toBe(0);
  });

  test('what cannot be cut is said in a sentence with an example', () => {
    for (const [list, stock] of [
      [pieces([41, 1]), 40],
      [pieces([0, 1]), 40],
      [pieces([-5, 1]), 40],
      [pieces([5, 1]), 0],
      [pieces([5, 1.5]), 40],
      [pieces([5, -1]), 40],
      [pieces([5, NaN]), 40],
      [pieces([5, 1_000_001]), 40],
      [pieces([5, 600_000], [6, 600_000]), 40],
      [pieces([5, 1]), 1e9],
    ] as [StockPiece[], string | number][]) {
      const found = planStock(list, exact(stock));
      expect(found.ok).toBe(false);
      if (!found.ok) expect(found.message).toMatch(/^[A-Z].*\d.*\.$/);
    }
  });

  test('a long list is given up on, not hung on, and still cut whole', () => {
    const list = pieces(
      ...Array.from({ length: 300 }, (_, i): [string, number] => [`${1000 + ((i * 7919) % 3001)}/100`, 3]),
    );
    const found = plan(list, 41);
    expect(faults(list, 41, found)).toEqual([]);
    expect(found.count).toBeGreaterThanOrEqual(found.bound);
  });
});
