import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  downTo,
  exact,
  least,
  most,
  nearestTo,
  ONE,
  rootUp,
  sum,
  toMark,
  upTo,
  wholeDown,
  wholeUp,
  ZERO,
  type Exact,
} from '../../src/measure/exact.js';
import { SETTING_TRIANGLES } from '../published/charts.js';
import { fractions } from './arbitraries.js';

const EIGHTH = exact(1, 8);
const SIXTEENTH = exact(1, 16);
const steps = fc.constantFrom(EIGHTH, SIXTEENTH, exact(9, 2), exact(1, 3), exact(5, 127), ONE);

const text = (value: Exact): string => value.toFraction(true);

describe('whole numbers', () => {
  test.each([
    ['5/2', 3, 2],
    ['-5/2', -2, -3],
    ['4', 4, 4],
    ['-4', -4, -4],
    ['0', 0, 0],
    ['1/1000', 1, 0],
  ])('%s lies between %i above and %i below', (value, up, down) => {
    expect(wholeUp(exact(value))).toBe(up);
    expect(wholeDown(exact(value))).toBe(down);
  });
});

describe('rounding to a mark', () => {
  test.each([
    ['52 1/16', EIGHTH, '52 1/8', '52', '52 1/8'],
    ['52 1/32', EIGHTH, '52 1/8', '52', '52'],
    ['52 1/8', EIGHTH, '52 1/8', '52 1/8', '52 1/8'],
    ['52 3/100', SIXTEENTH, '52 1/16', '52', '52'],
    ['-52 1/32', EIGHTH, '-52', '-52 1/8', '-52'],
  ])('%s up, down and nearest', (value, mark, up, down, nearest) => {
    expect(text(upTo(exact(value), mark))).toBe(up);
    expect(text(downTo(exact(value), mark))).toBe(down);
    expect(text(nearestTo(exact(value), mark))).toBe(nearest);
  });

  test('goes to a multiple, on the side it says, by less than a step', () => {
    fc.assert(
      fc.property(fractions({ min: -100 }), steps, (value, step) => {
        for (const rounded of [upTo(value, step), downTo(value, step), nearestTo(value, step)])
          expect(rounded.div(step).d).toBe(1n);
        const [up, down] = [upTo(value, step).sub(value), value.sub(downTo(value, step))];
        expect(up.gte(0) && up.lt(step) && down.gte(0) && down.lt(step)).toBe(true);
        const off = nearestTo(value, step).sub(value);
        expect(most(off, off.neg()).lte(least(up, down))).toBe(true);
      }),
    );
  });
});

describe('a size to cut', () => {
  test.each([
    ['12', '12'],
    ['12 1/1000', '12'],
    ['12 1/129', '12'],
    ['12 1/128', '12 1/8'],
    ['12 1/10', '12 1/8'],
    ['12 1/8', '12 1/8'],
  ])('%s in is %s in on a ruler of eighths', (value, mark) =>
    expect(text(toMark(exact(value), EIGHTH))).toBe(mark),
  );

  test('is never short by 1/128 in, and never longer than the next mark', () => {
    fc.assert(
      fc.property(fractions(), steps, (value, mark) => {
        const cut = toMark(value, mark);
        expect(cut.div(mark).d).toBe(1n);
        expect(value.sub(cut).lt(exact(1, 128))).toBe(true);
        expect(cut.sub(value).lt(mark)).toBe(true);
      }),
    );
  });

  test.each(SETTING_TRIANGLES)(
    'agrees with the published setting triangles of a %s in block',
    (block, side, corner) => {
      const diagonal = rootUp(exact(2 * Number(block) ** 2));
      expect(text(toMark(diagonal.add(exact('1.25')), EIGHTH))).toBe(side);
      expect(text(toMark(diagonal.div(2).add(exact('0.875')), EIGHTH))).toBe(corner);
    },
  );
});

describe('rootUp', () => {
  test.each([
    ['0', '0'],
    ['16', '4'],
    ['1/4', '1/2'],
    ['225', '15'],
    ['2500/16129', '50/127'],
    // √2 = 1.414213562…
    ['2', '1 207107/500000'],
  ])('√%s is %s', (value, root) => expect(text(rootUp(exact(value)))).toBe(root));

  test('is the least millionth whose square is not below', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fractions(),
          // more than the square of any side that is reckoned: 1000 in or a hundred blocks of 200 in
          fc.bigInt({ min: 0n, max: 10n ** 16n }).map((n) => exact(n)),
        ),
        (value) => {
          const root = rootUp(value);
          // What is the square of a fraction has a root that is none of the millionths.
          if (root.mul(root).equals(value)) return;
          const before = root.sub(exact(1, 1_000_000));
          expect(root.mul(1_000_000).d).toBe(1n);
          expect(root.mul(root).gt(value)).toBe(true);
          expect(before.lt(0) || before.mul(before).lt(value)).toBe(true);
        },
      ),
    );
  });
});

describe('least, most and sum', () => {
  test('agree with sorting and adding whole numbers', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: 1 }), (numbers) => {
        const sorted = numbers.toSorted((a, b) => a - b);
        const [first, ...rest] = numbers.map((value) => exact(value, 8));
        expect(
          least(first!, ...rest)
            .mul(8)
            .valueOf(),
        ).toBe(sorted[0]! + 0);
        expect(
          most(first!, ...rest)
            .mul(8)
            .valueOf(),
        ).toBe(sorted.at(-1)! + 0);
        expect(
          sum([first!, ...rest])
            .mul(8)
            .valueOf(),
        ).toBe(numbers.reduce((a, b) => a + b, 0));
      }),
    );
  });
  test('of nothing is 0', () => expect(sum([]).equals(ZERO)).toBe(true));
});
