import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sentence } from '../sentences.js';
import { exact, sum, type Exact } from '../../src/measure/exact.js';
import { checkPlan } from '../../src/planner/check.js';
import {
  everyPiece,
  planCloth,
  planClothAsync,
  type Cloth,
  type CutPiece,
  type CuttingPlan,
} from '../../src/planner/plan.js';
import { FAT_QUARTER_SQUARES } from '../published/charts.js';
import { fewestSheets, leastLength } from './exactly.js';

const piece = (width: number | string, height: number | string, count: number, turn = true): CutPiece => ({
  width: exact(width),
  height: exact(height),
  count,
  turn,
});
const cloth = (width: number | string): Cloth => ({ width: exact(width) });
const sheet = (width: number | string, height: number | string): Cloth => ({
  width: exact(width),
  height: exact(height),
});

/** A plan that the checker passes. */
const plan = (pieces: CutPiece[], from: Cloth): CuttingPlan => {
  const found = planCloth(pieces, from);
  if (!found.ok) throw new Error(sentence(found.problem));
  expect(checkPlan(pieces, from, found)).toEqual([]);
  return found;
};

const dimension = fc.oneof(
  fc.integer({ min: 4, max: 200 }).map((n) => exact(n, 8)),
  fc.integer({ min: 10, max: 600 }).map((mm) => exact(mm * 10, 254)),
  fc
    .tuple(fc.integer({ min: 1, max: 18 }), fc.constantFrom(3, 7, 999_983, 1_000_003))
    .map(([n, d]) => exact(n * d + 1, d)),
);
const list = fc.array(
  fc.record({
    width: dimension,
    height: dimension,
    count: fc.integer({ min: 0, max: 12 }),
    turn: fc.boolean(),
  }),
  { maxLength: 5 },
);

describe('cutting plans', () => {
  test('any plan passes the checker and is no less than the bound', () => {
    fc.assert(
      fc.property(
        list,
        fc.constantFrom(cloth(40), cloth('9999/254'), sheet(26, 27), sheet(30, '3001/100')),
        (all, from) => {
          const pieces = all.map((one) => ({ ...one, turn: one.turn || one.height.gt(from.height ?? 100) }));
          const found = planCloth(pieces, from);
          if (!found.ok) {
            const beyond = (a: Exact, b: Exact): boolean =>
              a.gt(from.width) || (!!from.height && b.gt(from.height));
            const { width, height, turn } = pieces[found.piece!]!;
            expect(beyond(width, height) && (!turn || beyond(height, width))).toBe(true);
            return;
          }
          expect(checkPlan(pieces, from, found)).toEqual([]);
          const area = sum(pieces.map(({ width, height, count }) => width.mul(height).mul(count)));
          const used = from.height ? exact(found.count) : found.length;
          expect(used.gte(found.bound)).toBe(true);
          expect(found.exact).toBe(used.equals(found.bound));
          expect(
            from.width
              .mul(used)
              .mul(from.height ?? 1)
              .gte(area),
          ).toBe(true);
          expect(everyPiece(found)).toHaveLength(pieces.reduce((all, { count }) => all + count, 0));
        },
      ),
      { numRuns: 100 },
    );
  });

  test('every strip says what is cut from it', () => {
    const pieces = [piece('13/2', '13/2', 20), piece('7/2', '13/2', 40), piece('7/2', '7/2', 36)];
    const { sheets } = plan(pieces, cloth(40));
    for (const { strips } of sheets)
      for (const { cuts, placed } of strips)
        pieces.forEach((_, i) =>
          expect(cuts.find((cut) => cut.piece === i)?.count ?? 0).toBe(
            placed.filter((spot) => spot.piece === i).length,
          ),
        );
  });

  const sizes = [3, 5, 6, 7, 8, 9, 11, 13];
  const small = fc.array(
    fc.record({
      width: fc.constantFrom(...sizes),
      height: fc.constantFrom(...sizes),
      count: fc.integer({ min: 1, max: 3 }),
      turn: fc.boolean(),
    }),
    { minLength: 1, maxLength: 3 },
  );

  test('small lists: the exact optimum, found by trying every way of cutting', () => {
    let [plans, optimal] = [0, 0];
    fc.assert(
      fc.property(small, fc.integer({ min: 20, max: 27 }), (list, width) => {
        fc.pre(list.reduce((all, { count }) => all + count, 0) <= 7);
        const pieces = list.map((one) => ({ ...one, width: exact(one.width), height: exact(one.height) }));
        const found = plan(pieces, cloth(width));
        const least = leastLength(list, width);
        expect(found.length.gte(least)).toBe(true);
        expect(found.bound.lte(least)).toBe(true);
        plans++;
        if (found.length.equals(least)) optimal++;
        expect(found.length.lte(exact(least).mul(exact('11/10')))).toBe(true);
      }),
      { numRuns: 80, seed: 1 },
    );
    expect(optimal / plans).toBeGreaterThan(0.95);
  });

  test('small lists: the fewest sheets, found by trying every way of sharing and cutting', () => {
    fc.assert(
      fc.property(
        small,
        fc.constantFrom<[number, number]>([14, 15], [18, 20], [16, 13]),
        (list, [width, height]) => {
          fc.pre(list.reduce((all, { count }) => all + count, 0) <= 8);
          const pieces = list.map((one) => ({ ...one, width: exact(one.width), height: exact(one.height) }));
          const found = plan(pieces, sheet(width, height));
          const fewest = fewestSheets(list, width, height);
          expect(found.count).toBe(fewest);
          expect(found.bound.lte(fewest)).toBe(true);
        },
      ),
      { numRuns: 80, seed: 1 },
    );
  });

  test.each(FAT_QUARTER_SQUARES)(
    '%s in squares: %i from an 18 × 22 in fat quarter, and not one more',
    (size, count) => {
      expect(plan([piece(size, size, count)], sheet(18, 22)).count).toBe(1);
      expect(plan([piece(size, size, count + 1)], sheet(18, 22))).toMatchObject({ count: 2, exact: true });
    },
  );

  /** Whether cuts down each strip come next: no piece lies beside another one's inside. */
  const isInStrips = ({ sheets }: CuttingPlan): boolean =>
    sheets.every(({ strips }) =>
      strips.every(({ placed }) =>
        placed.every(({ x, width }) => placed.every((one) => one.x.lte(x) || one.x.gte(x.add(width)))),
      ),
    );

  test('forty squares of 6 1/2 in come from seven strips', () => {
    // Geometry: six across 40 in (39 in), so ⌈40 ÷ 6⌉ = 7 strips of 6 1/2 in are 45 1/2 in.
    const found = plan([piece('13/2', '13/2', 40)], cloth(40));
    expect(found.length.equals(exact('91/2'))).toBe(true);
    expect(found.exact).toBe(true);
    expect(found.sheets[0]!.strips.map(({ times, cuts }) => [times, cuts])).toEqual([
      [6, [{ piece: 0, count: 6 }]],
      [1, [{ piece: 0, count: 4 }]],
    ]);
  });

  test('strips across the cloth stay if another order of cuts does not save a step of the shop', () => {
    const pieces = [piece('13/2', '13/2', 40), piece(2, '7/2', 32), piece('7/2', '7/2', 24)];
    const anySaving = plan(pieces, cloth(40));
    // 1/8 yd is 4 1/2 in: 58 in and 55 1/2 in of cloth are both bought as 58 1/2 in.
    const bySteps = plan(pieces, { ...cloth(40), step: exact('9/2') });
    expect([isInStrips(anySaving), isInStrips(bySteps)]).toEqual([false, true]);
    expect(
      bySteps.length
        .div(exact('9/2'))
        .ceil()
        .equals(anySaving.length.div(exact('9/2')).ceil()),
    ).toBe(true);
    expect(bySteps.sheets[0]!.strips.every(({ height }) => height.lte(exact('13/2')))).toBe(true);
  });

  test('long pieces are cut lengthwise, beside what fits there', () => {
    // Geometry: two 4 1/2 × 61 in borders beside each other leave 31 in; sashes 2 1/2 × 12 1/2 go there twelve across.
    const found = plan([piece('9/2', 61, 2), piece('5/2', '25/2', 40)], cloth(40));
    expect(found.length.equals(61)).toBe(true);
    expect(found.exact).toBe(true);
  });

  test('a one-way print is not turned', () => {
    // Geometry: 30 in wide, turned to 20 in two would fit beside each other; as they are they lie below each other.
    expect(plan([piece(30, 20, 2, false)], cloth(40)).length.equals(40)).toBe(true);
    expect(plan([piece(30, 20, 2, true)], cloth(40)).length.equals(30)).toBe(true);
    expect(planCloth([piece(50, 20, 1, false)], cloth(40))).toMatchObject({ ok: false, piece: 0 });
    expect(plan([piece(50, 20, 1, true)], cloth(40)).length.equals(50)).toBe(true);
  });

  test('a piece as wide as the cloth fits, however finely both are measured', () => {
    for (const width of ['40', '9999/254', '40000001/1000003', '119999999/3000017']) {
      const odd = [piece('1000/999983', '7/1000003', 3), piece('12345/9973', '10/3', 2)];
      for (const turn of [true, false]) {
        const pieces = [piece(width, '9/2', 2, turn), ...odd];
        const found = plan(pieces, cloth(width));
        expect(found.length.gte(9)).toBe(true);
        plan([piece(width, '20/7', 3, turn), ...odd], sheet(width, '20/7'));
      }
    }
  });

  test('the search ends where the bound is less than any piece', () => {
    // By area these six take 2.9 in of cloth, yet none is slimmer than 2.99 in.
    const found = plan([piece('3000010/1000003', '800/127', 6)], cloth('9999/254'));
    expect(found.length.gte(exact('3000010/1000003'))).toBe(true);
  });

  test('a million equal squares are counted, not laid out', () => {
    // Geometry: sixteen 2 1/2 in squares fill 40 in; 62,500 strips of 2 1/2 in.
    const found = plan([piece('5/2', '5/2', 1_000_000)], cloth(40));
    expect(found.length.equals(156_250)).toBe(true);
    expect(found).toMatchObject({ exact: true, sheets: [{ strips: [{ times: 62_500 }] }] });
    expect(everyPiece(found, 100)).toHaveLength(100);
    // Geometry: 56 on an 18 × 20 in sheet (7 across, 8 down); ⌈1,000,000 ÷ 56⌉ = 17,858.
    expect(plan([piece('5/2', '5/2', 1_000_000)], sheet(18, 20))).toMatchObject({
      count: 17_858,
      exact: true,
    });
    plan([piece('5/2', '5/2', 400_000), piece('9/2', '13/2', 300_000), piece(7, 3, 300_000)], cloth(42));
  });

  test('more than can be placed one by one is refused, not hung on', () => {
    const tiny = planCloth([piece('1/100', '1/100', 999_999), piece(40, 100, 1)], cloth(40));
    expect(tiny.ok ? 'planned' : sentence(tiny.problem)).toContain('one by one');
  });

  test('nothing to cut takes nothing', () => {
    for (const pieces of [[], [piece(5, 5, 0)], [piece(500, 500, 0)]]) {
      const found = plan(pieces, cloth(40));
      expect(found).toMatchObject({ count: 0, sheets: [], exact: true });
      expect(found.length.equals(0)).toBe(true);
      expect(plan(pieces, sheet(18, 20)).count).toBe(0);
    }
  });

  test('what cannot be planned is said in a sentence with an example', () => {
    const bad: [CutPiece[], Cloth, number | undefined][] = [
      [[piece(5, 5, 1), piece(41, 41, 1)], cloth(40), 1],
      [[piece(19, 21, 1)], sheet(18, 20), 0],
      [[piece(0, 5, 1)], cloth(40), 0],
      [[piece(5, -5, 1)], cloth(40), 0],
      [[piece(5, 5, 1.5)], cloth(40), 0],
      [[piece(5, 5, -1)], cloth(40), 0],
      [[piece(5, 5, NaN)], cloth(40), 0],
      [[piece(5, 5, Infinity)], cloth(40), 0],
      [[piece(5, 5, 1)], cloth(0), undefined],
      [[piece(5, 5, 1)], cloth(-40), undefined],
      [[piece(5, 5, 1)], { ...cloth(40), step: exact(0) }, undefined],
      [[piece(5, 1e9, 1)], cloth(40), 0],
      [[piece(5, 5, 600_000), piece(6, 6, 600_000)], cloth(40), undefined],
      [Array.from({ length: 1001 }, () => piece(5, 5, 1)), cloth(40), undefined],
    ];
    for (const [pieces, from, at] of bad) {
      const found = planCloth(pieces, from);
      expect(found.ok).toBe(false);
      if (found.ok) continue;
      expect(sentence(found.problem)).toMatch(/^[A-Z].*\d.*\.$/);
      expect(found.piece).toBe(at);
    }
  });

  test('in slices: the same plan, with progress, and stopped by a signal', async () => {
    const pieces = Array.from({ length: 60 }, (_, i) =>
      piece(`${16 + ((i * 37) % 71)}/8`, `${16 + ((i * 53) % 83)}/8`, 1 + (i % 3)),
    );
    const shown: number[] = [];
    const sliced = await planClothAsync(pieces, cloth(40), { onProgress: (done) => shown.push(done) });
    expect(sliced).toEqual(planCloth(pieces, cloth(40)));
    expect(shown.length).toBeGreaterThan(10);
    expect(shown).toEqual([...shown].sort((a, b) => a - b));
    expect(shown.every((done) => done >= 0 && done <= 1)).toBe(true);

    const stop = new AbortController();
    let seen = 0;
    const stopped = planClothAsync(pieces, cloth(40), {
      signal: stop.signal,
      onProgress: () => ++seen === 3 && stop.abort(),
    });
    await expect(stopped).rejects.toMatchObject({ name: 'AbortError' });
    expect(seen).toBe(3);
    await expect(planClothAsync(pieces, cloth(40), { signal: AbortSignal.abort() })).rejects.toThrow();
  });
});
