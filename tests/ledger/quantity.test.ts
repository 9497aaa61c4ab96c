import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { count, inches, ONE_WHOLE, Quantity, total, type Kind } from '../../src/ledger/quantity.js';
import { exact, type Exact } from '../../src/measure/exact.js';
import { english } from '../sentences.js';
import { faultIn, readFormula } from './reader.js';

const t = english();
const percent = (share: number): Quantity => new Quantity(exact(share, 100), 'percent');

describe('a number that knows how it was got', () => {
  const [width, overage] = [inches(58).inRow('width'), inches(4).inRow('overage')];

  // [the number, its formula as a reader sees it, what it comes to]: school arithmetic.
  it.each<[Quantity, string, string]>([
    [width.plus(overage.times(2)), '58 + 2 × 4', '66 in'],
    [width.plus(overage).times(2), '2 × (58 + 4)', '124 in'],
    [width.minus(overage.plus(inches(1))), '58 − (4 + 1)', '53 in'],
    [width.minus(overage).minus(inches(1)), '58 − 4 − 1', '53 in'],
    [width.plus(overage.minus(inches(1))), '58 + 4 − 1', '61 in'],
    [width.minus(overage.minus(inches(1))), '58 − (4 − 1)', '55 in'],
    [
      count(2)
        .times(inches(40))
        .minus(count(2).times(inches('1/2'))),
      '2 × 40 − 2 × 1/2',
      '79 in',
    ],
    [width.over(overage), '58 ÷ 4', '14 1/2'],
    [width.over(count(4).times(count(2))), '58 ÷ (4 × 2)', '7 1/4 in'],
    [width.over(count(4).over(2)), '58 ÷ (4 ÷ 2)', '29 in'],
    [width.plus(overage).over(2), '(58 + 4) ÷ 2', '31 in'],
    [inches(100).lessPercent(percent(3)), '100 × (1 − 3 %)', '97 in'],
    [inches(97).beforeLoss(percent(3)), '97 ÷ (1 − 3 %)', '100 in'],
    [width.plus(overage).lessPercent(percent(50)), '(58 + 4) × (1 − 50 %)', '31 in'],
    [inches(9).plus(inches(7)).root(), '√(9 + 7)', '4 in'],
    [inches(3).plus(inches(4)).diagonal(), '(3 + 4) × √2', '≈9 7/8 in'],
    [inches(3).times(2).sideOfDiagonal(), '2 × 3 ÷ √2', '≈4 1/4 in'],
    [inches(16).diagonal().over(count(2).times(4)), '16 × √2 ÷ (4 × 2)', '≈2 13/16 in'],
    [inches(16).minus(inches(1).diagonal()), '16 − 1 × √2', '≈14 9/16 in'],
    [width.plus(overage.asResult().plus(inches(1)).asResult()), '58 + 5', '63 in'],
    [width.upTo(inches(24)), '58, rounded up to whole repeats of 24', '72 in'],
    [width.upTo(inches(24)).times(2), '2 × (58, rounded up to whole repeats of 24)', '144 in'],
    [inches('1/3').plus(overage).onMark(inches('1/8')), '1/3 + 4, rounded up to the next 1/8 in', '4 3/8 in'],
    [total([width, overage, inches('1/2')]), '58 + 4 + 1/2', '62 1/2 in'],
    [total([]), '0', '0 in'],
    [ONE_WHOLE.minus(percent(5)), '1 − 5 %', '19/20'],
  ])('%#: its formula is shown with its numbers filled in', (quantity, formula, value) => {
    expect(t.formula(quantity)).toBe(formula);
    expect(t.value(quantity)).toBe(value);
  });

  it('knows the rows that it came from, each once, and not what was in them', () => {
    const rows = new Set<string>();
    width.plus(overage.times(2)).minus(width.asResult()).rowsInto(rows);
    expect([...rows]).toEqual(['width', 'overage']);
    const again = new Set<string>();
    width.plus(overage).inRow('needWidth').times(2).rowsInto(again);
    expect([...again]).toEqual(['needWidth']);
  });

  it.each<[Quantity, Kind]>([
    [inches(4).times(3), 'length'],
    [count(3).times(inches(4)), 'length'],
    [inches(4).lessPercent(percent(3)), 'length'],
    [inches(8).over(2), 'length'],
    [inches(8).over(inches(2)), 'number'],
    [count(3).times(count(2)), 'count'],
    [new Quantity(exact(12), 'money').times(3), 'money'],
  ])('%#: is of the kind that its parts make it', (quantity, kind) => expect(quantity.kind).toBe(kind));

  it.each([
    [inches(10), [9, 12], 12],
    [inches(13), [9, 12], 18],
    [inches(24), [9, 12], 24],
    [inches('1/3'), [9], 9],
  ])('%#: goes up to the step that comes to least', (need, steps, cut) => {
    expect(need.upToLeast(steps.map(inches)).value.equals(cut)).toBe(true);
  });

  it.each([
    ['37.504', 37.5],
    ['37.505', 37.51],
    ['1/3', 0.33],
  ])('is paid in coins: %s', (price, paid) => {
    const cost = new Quantity(exact(price), 'money').inCoins(exact(1, 100));
    expect([cost.value.valueOf(), cost.kind]).toEqual([paid, 'money']);
  });

  it('is said in the units of its reader, counts and shares as they are', () => {
    const quantity = inches(exact(50, 127))
      .plus(inches(exact(100, 127)).times(2))
      .lessPercent(percent(10));
    const cm = english(undefined, { units: 'cm', comma: true });
    expect(cm.reckonedLength(quantity)).toBe('(1 + 2 × 2) × (1 − 10 %) = 4,5 cm');
  });
});

/** A number with its value reckoned again, by the library of exact numbers alone; nothing is below nothing, nor divides by it. */
interface Twice {
  quantity: Quantity;
  value: Exact;
}
const leaf: fc.Arbitrary<Twice> = fc
  .tuple(fc.integer({ min: 1, max: 800 }), fc.constantFrom(1, 2, 4, 8, 3), fc.constantFrom('', 'row'))
  .map(([top, bottom, row]) => {
    const value = exact(top, bottom);
    return { value, quantity: row ? inches(value).inRow(row) : inches(value) };
  });
const times = fc.integer({ min: 1, max: 9 });
const share = fc.constantFrom(1, 3, 5, 12);

const trees = fc.letrec<{ any: Twice }>((tie) => {
  const any = tie('any');
  const two = fc.tuple(any, any);
  return {
    any: fc.oneof(
      { maxDepth: 5, depthIdentifier: 'formula' },
      leaf,
      two.map(([a, b]) => ({ quantity: a.quantity.plus(b.quantity), value: a.value.add(b.value) })),
      two.map(([a, b]) => ({ quantity: a.quantity.minus(b.quantity), value: a.value.sub(b.value) })),
      fc.tuple(any, times).map(([a, n]) => ({ quantity: a.quantity.times(n), value: a.value.mul(n) })),
      fc.tuple(any, times).map(([a, n]) => ({ quantity: a.quantity.over(n), value: a.value.div(n) })),
      fc.tuple(any, times, times).map(([a, n, m]) => ({
        quantity: a.quantity.over(count(n).plus(count(m))),
        value: a.value.div(n + m),
      })),
      fc.tuple(any, share).map(([a, p]) => ({
        quantity: a.quantity.lessPercent(percent(p)),
        value: a.value.mul(exact(100 - p, 100)),
      })),
      fc.tuple(any, share).map(([a, p]) => ({
        quantity: a.quantity.beforeLoss(percent(p)),
        value: a.value.div(exact(100 - p, 100)),
      })),
      any.map(({ quantity, value }) => ({ quantity: quantity.asResult(), value })),
    ),
  };
});

describe('any formula', () => {
  test('has the exact value that its calls reckon', () => {
    fc.assert(
      fc.property(trees.any, ({ quantity, value }) => {
        expect(quantity.value.equals(value)).toBe(true);
      }),
      { numRuns: 500 },
    );
  });

  test.each(['in', 'cm'] as const)('is shown so that it can be reckoned again, in %s', (units) => {
    const teller = english(undefined, { units });
    fc.assert(
      fc.property(trees.any, ({ quantity }) => {
        expect(faultIn(teller.reckonedLength(quantity), units)).toBeUndefined();
      }),
      { numRuns: 500 },
    );
  });

  test('with a root is never short, and by less than anybody can cut', () => {
    fc.assert(
      fc.property(trees.any, ({ quantity }) => {
        fc.pre(quantity.value.gt(0) && !t.formula(quantity).includes('≈'));
        for (const rooted of [quantity.diagonal(), quantity.sideOfDiagonal(), quantity.root()]) {
          const { low } = readFormula(t.formula(rooted), 'in');
          const over = rooted.value.valueOf() - low;
          expect(over).toBeGreaterThanOrEqual(-1e-9 * low);
          expect(over).toBeLessThan(1e-6 + 1e-9 * low);
        }
      }),
      { numRuns: 300 },
    );
  });
});
