import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exact } from '../../src/measure/exact.js';
import { checkPlan, type Fault } from '../../src/planner/check.js';
import {
  planCloth,
  type Cloth,
  type CutPiece,
  type CuttingPlan,
  type Placed,
} from '../../src/planner/plan.js';

const piece = (width: number | string, height: number | string, count: number, turn = true): CutPiece => ({
  width: exact(width),
  height: exact(height),
  count,
  turn,
});

const place = (piece: number, [x, y, width, height]: number[], turned = false): Placed => ({
  piece,
  turned,
  x: exact(x!),
  y: exact(y!),
  width: exact(width!),
  height: exact(height!),
});

/** A plan of one strip that holds these places. */
const oneStrip = (placed: Placed[], height: number): CuttingPlan => ({
  ok: true,
  sheets: [
    {
      times: 1,
      strips: [{ y: exact(0), height: exact(height), times: 1, cuts: [], placed }],
      used: exact(height),
    },
  ],
  count: 1,
  length: exact(height),
  bound: exact(0),
  exact: false,
});

const faultsOf = (faults: Fault[]): string[] => [...new Set(faults.map(({ fault }) => fault))].sort();

const cloth = { width: exact(40) };

describe('checking a plan', () => {
  test('a plan that can be cut has no fault', () => {
    const plan = oneStrip([place(0, [0, 0, 10, 5]), place(0, [10, 0, 10, 5]), place(1, [20, 0, 3, 4])], 5);
    expect(checkPlan([piece(10, 5, 2), piece(3, 4, 1)], cloth, plan)).toEqual([]);
    const turned = oneStrip([place(0, [0, 0, 5, 10], true)], 10);
    expect(checkPlan([piece(10, 5, 1)], cloth, turned)).toEqual([]);
  });

  test('a pinwheel cannot be cut edge to edge', () => {
    // Geometry: four 2 × 1 round a square hole of 1; every line across or down cuts through one of them.
    const pinwheel = [
      place(0, [0, 0, 2, 1]),
      place(0, [2, 0, 1, 2], true),
      place(0, [1, 2, 2, 1]),
      place(0, [0, 1, 1, 2], true),
    ];
    expect(faultsOf(checkPlan([piece(2, 1, 4)], cloth, oneStrip(pinwheel, 3)))).toEqual(['uncuttable']);
    // With its middle filled, as a quilt block is sewn, no more so.
    const filled = [...pinwheel, place(1, [1, 1, 1, 1])];
    expect(faultsOf(checkPlan([piece(2, 1, 4), piece(1, 1, 1)], cloth, oneStrip(filled, 3)))).toEqual([
      'uncuttable',
    ]);
    // Inside a larger layout too, where the first cuts do go through.
    const inside = [...pinwheel, place(1, [3, 0, 4, 3]), place(1, [7, 0, 4, 3])];
    expect(faultsOf(checkPlan([piece(2, 1, 4), piece(4, 3, 2)], cloth, oneStrip(inside, 3)))).toEqual([
      'uncuttable',
    ]);
  });

  const pieces = [piece(10, 5, 2), piece(3, 4, 1, false)];
  const sound = [place(0, [0, 0, 10, 5]), place(0, [10, 0, 10, 5]), place(1, [20, 0, 3, 4])];
  const [first, second, third] = sound as [Placed, Placed, Placed];
  const bad: [string, Placed[], string[]][] = [
    ['a piece left out', [first, third], ['missing']],
    ['a piece cut once too often', [...sound, place(0, [23, 0, 10, 5])], ['extra']],
    ['a piece nobody asked for', [...sound, place(7, [23, 0, 1, 1])], ['extra']],
    ['one piece in place of another', [first, place(1, [10, 0, 3, 4]), third], ['extra', 'missing']],
    ['a piece a little narrow', [first, { ...second, width: exact('79/8') }, third], ['size']],
    ['a piece a little short', [first, { ...second, height: exact('39/8') }, third], ['size']],
    ['a turn that is forbidden', [first, second, place(1, [20, 0, 4, 3], true)], ['turned']],
    ['a turn that is not said', [first, second, place(1, [20, 0, 4, 3])], ['size']],
    ['past the right edge', [first, second, place(1, [37.5, 0, 3, 4])], ['outside']],
    ['past the left edge', [first, second, place(1, [-0.125, 0, 3, 4])], ['outside', 'overlap']],
    ['past the bottom', [first, second, place(1, [20, 1.125, 3, 4])], ['outside']],
    ['past the top', [first, second, place(1, [20, -0.125, 3, 4])], ['outside']],
    ['a sliver shared', [first, place(0, [9.875, 0, 10, 5]), third], ['overlap']],
    ['one on top of the other', [first, first, third], ['overlap']],
  ];
  test.each(bad)('%s is found', (_, placed, expected) => {
    expect(faultsOf(checkPlan(pieces, cloth, oneStrip(placed, 5)))).toEqual(expected);
  });

  test('a wrong sum is found', () => {
    const plan = oneStrip(sound, 5);
    expect(faultsOf(checkPlan(pieces, cloth, { ...plan, length: exact(4) }))).toEqual(['miscounted']);
    expect(faultsOf(checkPlan(pieces, cloth, { ...plan, length: exact(6) }))).toEqual(['miscounted']);
    expect(faultsOf(checkPlan(pieces, cloth, { ...plan, count: 2 }))).toEqual(['miscounted']);
    const sheet = { ...plan.sheets[0]!, used: exact(4) };
    expect(faultsOf(checkPlan(pieces, cloth, { ...plan, sheets: [sheet] }))).toEqual(['miscounted']);
    for (const times of [0, 1.5, NaN, -1])
      expect(faultsOf(checkPlan(pieces, cloth, { ...plan, sheets: [{ ...sheet, times }] }))).toContain(
        'miscounted',
      );
    expect(faultsOf(checkPlan(pieces, cloth, { ...plan, sheets: [] }))).toContain('missing');
    const onSheet = { width: exact(40), height: exact(5) };
    expect(checkPlan(pieces, onSheet, plan)).toEqual([]);
    expect(faultsOf(checkPlan(pieces, onSheet, { ...plan, count: 2 }))).toEqual(['miscounted']);
    const [first] = plan.sheets;
    const half = { ...plan, count: 1.5, sheets: [{ ...first!, times: 1.5 }] };
    const asked = [piece(10, 5, 3), piece(3, 4, 1.5, false)];
    expect(faultsOf(checkPlan(asked, onSheet, half))).toEqual(['miscounted']);
    const [strip] = first!.strips;
    const none = {
      ...plan,
      length: exact(0),
      sheets: [{ ...first!, strips: [{ ...strip!, times: 0 }], used: exact(0) }],
    };
    expect(faultsOf(checkPlan([piece(10, 5, 0), piece(3, 4, 0, false)], cloth, none))).toEqual([
      'miscounted',
    ]);
    // Two sheets cannot come of one length of cloth.
    const two = { ...plan, sheets: [{ ...plan.sheets[0]!, times: 2 }], count: 2 };
    expect(faultsOf(checkPlan([piece(10, 5, 4), piece(3, 4, 2, false)], cloth, two))).toEqual(['miscounted']);
  });

  test('strips over each other and past the end of a sheet are found', () => {
    const strip = { height: exact(5), times: 2, cuts: [], placed: [place(0, [0, 0, 10, 5])] };
    const below = { ...strip, y: exact('19/2'), placed: [place(0, [0, 9.5, 10, 5])] };
    const plan = (second: typeof below): CuttingPlan => ({
      ...oneStrip([], 20),
      sheets: [{ times: 1, strips: [{ ...strip, y: exact(0) }, second], used: second.y.add(10) }],
      length: second.y.add(10),
    });
    const onSheet = (height: string): CuttingPlan => ({ ...plan(apart), length: exact(height) });
    expect(faultsOf(checkPlan([piece(10, 5, 4)], cloth, plan(below)))).toEqual(['overlap']);
    const above = { ...strip, y: exact(-10), placed: [place(0, [0, -10, 10, 5])] };
    expect(faultsOf(checkPlan([piece(10, 5, 4)], cloth, { ...plan(above), length: exact(10) }))).toContain(
      'outside',
    );
    const apart = { ...strip, y: exact(10), placed: [place(0, [0, 10, 10, 5])] };
    expect(checkPlan([piece(10, 5, 4)], cloth, plan(apart))).toEqual([]);
    const sheet: Cloth = { width: exact(18), height: exact(20) };
    expect(checkPlan([piece(10, 5, 4)], sheet, onSheet('20'))).toEqual([]);
    const low: Cloth = { width: exact(18), height: exact('159/8') };
    expect(faultsOf(checkPlan([piece(10, 5, 4)], low, onSheet('159/8')))).toEqual(['outside']);
  });

  /** Ways to spoil one piece of a sound plan, each with the faults of which one at least must be found. */
  const spoil: [(spot: Placed, other: Placed) => Placed, string[]][] = [
    [(spot) => ({ ...spot, x: spot.x.sub(50) }), ['outside']],
    [(spot) => ({ ...spot, x: spot.x.add(50) }), ['outside']],
    [(spot) => ({ ...spot, y: spot.y.sub(1000) }), ['outside']],
    [(spot) => ({ ...spot, y: spot.y.add(1000) }), ['outside']],
    [(spot) => ({ ...spot, width: spot.width.sub(exact('1/64')) }), ['size']],
    [(spot) => ({ ...spot, height: spot.height.add(exact('1/64')) }), ['size']],
    [(spot) => ({ ...spot, piece: spot.piece + 1 }), ['extra', 'missing']],
    [(spot, { x, y }) => ({ ...spot, x, y }), ['overlap']],
  ];

  test('any spoilt plan is rejected', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            width: fc.integer({ min: 8, max: 100 }),
            height: fc.integer({ min: 8, max: 100 }),
            count: fc.integer({ min: 1, max: 9 }),
          }),
          { minLength: 2, maxLength: 4 },
        ),
        fc.nat(),
        fc.nat(),
        fc.constantFrom(...spoil),
        (list, one, other, [change, expected]) => {
          const pieces = list.map(({ width, height, count }) => piece(`${width}/8`, `${height}/8`, count));
          const plan = planCloth(pieces, cloth) as CuttingPlan;
          expect(checkPlan(pieces, cloth, plan)).toEqual([]);
          const strips = plan.sheets[0]!.strips;
          const crowded = strips.filter(({ placed }) => placed.length > 1);
          fc.pre(crowded.length > 0);
          const strip = crowded[one % crowded.length]!;
          const at = other % strip.placed.length;
          const neighbour = strip.placed[(at + 1) % strip.placed.length]!;
          const placed = strip.placed.map((spot, i) => (i === at ? change(spot, neighbour) : spot));
          const spoilt = strips.map((each) => (each === strip ? { ...strip, placed } : each));
          const found = faultsOf(
            checkPlan(pieces, cloth, { ...plan, sheets: [{ ...plan.sheets[0]!, strips: spoilt }] }),
          );
          expect(found.some((fault) => expected.includes(fault))).toBe(true);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('what it passes, a look at every pair of pieces passes too', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.tuple(fc.nat(6), fc.nat(6), fc.integer({ min: 1, max: 3 }), fc.integer({ min: 1, max: 3 })),
          {
            minLength: 1,
            maxLength: 6,
          },
        ),
        (boxes) => {
          const placed = boxes.map((box, i) => place(i, box));
          const pieces = boxes.map(([, , width, height]) => piece(width, height, 1));
          const overlaps = boxes.some(([x, y, w, h], i) =>
            boxes.some(([a, b, c, d], j) => j > i && x < a + c && a < x + w && y < b + d && b < y + h),
          );
          const found = faultsOf(checkPlan(pieces, cloth, oneStrip(placed, 9)));
          expect(found.includes('overlap')).toBe(overlaps);
          expect(found.filter((fault) => fault !== 'overlap' && fault !== 'uncuttable')).toEqual([]);
        },
      ),
      { numRuns: 2000 },
    );
  });
});
