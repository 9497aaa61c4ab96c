import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fewestLengths } from '../../src/planner/fewest-lengths.js';
import { exact } from '../../src/measure/exact.js';

/** For every set of pieces, the fewest lengths and what its last one holds, from the sets that are one piece smaller. */
const fewestBySets = (lengths: number[], stock: number): number => {
  const sets: [count: number, used: number][] = [[1, 0]];
  for (let set = 1; set < 2 ** lengths.length; set += 1) {
    const ways = lengths.flatMap((length, piece): [number, number][] => {
      if (!(set & (1 << piece))) return [];
      const [count, used] = sets[set ^ (1 << piece)]!;
      return [used + length <= stock ? [count, used + length] : [count + 1, length]];
    });
    sets[set] = ways.sort((a, b) => a[0] - b[0] || a[1] - b[1])[0]!;
  }
  return sets.at(-1)![0];
};

test('needs as few lengths as any way of sharing, found over all sets of the pieces', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 1, maxLength: 8 }), (lengths) => {
      const pieces = lengths.map((length) => exact(length));
      expect(fewestLengths(pieces, exact(40))).toBe(fewestBySets(lengths, 40));
    }),
  );
});

test('shares where longest-first into the first length that has room would not', () => {
  // Geometry: 20 + 10 + 10 and 16 + 14 + 10 fill two lengths of 40; longest first leaves 10 over.
  expect(
    fewestLengths(
      [20, 16, 14, 10, 10, 10].map((length) => exact(length)),
      exact(40),
    ),
  ).toBe(2);
});
