import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fewestShared } from '../../src/cutting/share.js';
import { planStock } from '../../src/cutting/stock.js';
import { exact } from '../../src/measure/exact.js';

test('needs as few lengths as the general plan for the same pieces, which is tested against brute force', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 1, maxLength: 8 }), (lengths) => {
      const pieces = lengths.map((length) => exact(length));
      const plan = planStock(
        pieces.map((length) => ({ length, count: 1 })),
        exact(40),
      );
      expect(plan.ok && plan.exact && plan.count).toBe(fewestShared(pieces, exact(40)));
    }),
  );
});

test('shares where longest-first into the first length that has room would not', () => {
  // Geometry: 20 + 10 + 10 and 16 + 14 + 10 fill two lengths of 40; longest first leaves 10 over.
  expect(
    fewestShared(
      [20, 16, 14, 10, 10, 10].map((length) => exact(length)),
      exact(40),
    ),
  ).toBe(2);
});
