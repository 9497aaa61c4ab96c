import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exact, leastWhole, rootDown } from '../../src/measure/exact.js';

describe('leastWhole', () => {
  test('finds what counting finds', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 5 }), fc.integer({ min: 0, max: 3000 }), (from, above) => {
        let counted = from;
        while (counted < above) counted += 1;
        expect(leastWhole((count) => count >= above, from)).toBe(counted);
      }),
    );
  });
});

describe('rootDown', () => {
  test.each([
    [16, 1, '4'],
    ['63/4', 1, '3'],
    ['1/4', '1/8', '1/2'],
    [2, '1/8', '1 3/8'],
    [0, '1/8', '0'],
  ])('√%s in steps of %s is %s', (value, step, root) =>
    expect(rootDown(exact(value), exact(step)).toFraction(true)).toBe(root),
  );

  test('is the greatest multiple whose square is not above', () => {
    fc.assert(
      fc.property(fc.nat(1e6), fc.integer({ min: 1, max: 64 }), (value, parts) => {
        const root = rootDown(exact(value, 7), exact(1, parts));
        const next = root.add(exact(1, parts));
        expect(root.mul(root).lte(exact(value, 7))).toBe(true);
        expect(next.mul(next).gt(exact(value, 7))).toBe(true);
        expect(root.mul(parts).d).toBe(1n);
      }),
    );
  });
});
