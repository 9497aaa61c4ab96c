import { describe, expect, test } from 'vitest';
import { checkPlan } from '../../src/planner/check.js';
import { planCloth, type CuttingPlan } from '../../src/planner/plan.js';
import { exact } from '../../src/measure/exact.js';
import { fitsSheet, type SmallPiece } from './exactly.js';
import { dice } from './seeded.js';

/** Sides in quarter inches, width first. */
type Sides = readonly [number, number];

const FAT_QUARTER: Sides = [80, 72];
const FAT_EIGHTH: Sides = [80, 36];
const ODD: Sides[] = [
  [72, 80],
  [36, 80],
  [40, 40],
  [52, 67],
  [101, 43],
];

/** How many sheets the planner takes for pieces in quarter inches; its plan can be cut. */
const sheetsFor = (list: SmallPiece[], [width, height]: Sides): number => {
  const pieces = list.map((one) => ({ ...one, width: exact(one.width, 4), height: exact(one.height, 4) }));
  const from = { width: exact(width, 4), height: exact(height, 4) };
  const plan = planCloth(pieces, from) as CuttingPlan;
  expect(checkPlan(pieces, from, plan)).toEqual([]);
  return plan.count;
};

const square = (side: number, count: number): SmallPiece => ({
  width: side,
  height: side,
  count,
  turn: true,
});
const total = (list: SmallPiece[]): number => list.reduce((all, { count }) => all + count, 0);
const area = (list: SmallPiece[]): number =>
  list.reduce((all, { width, height, count }) => all + width * height * count, 0);

/** A sheet in so many pieces, or a few less: cut edge to edge, each somewhere. */
const cutUp = (roll: (sides: number) => number, sheet: Sides, most: number): SmallPiece[] => {
  const parts: Sides[] = [sheet];
  for (let cuts = 0; cuts < 60 && parts.length < most; cuts++) {
    const at = roll(parts.length);
    const [w, h] = parts[at]!;
    const down = roll(2);
    const long = down ? h : w;
    if (long < 14) continue;
    const cut = 6 + roll(long - 12);
    parts.splice(
      at,
      1,
      ...((down
        ? [
            [w, cut],
            [w, h - cut],
          ]
        : [
            [cut, h],
            [w - cut, h],
          ]) as Sides[]),
    );
  }
  return parts.map(([width, height]) => ({ width, height, count: 1, turn: true }));
};

describe('one sheet is enough', () => {
  // Geometry: 5 3/4 × 2 = 11 1/2 in across, and 4 1/4 × 2 = 8 1/2 in in one column beside them: 15 3/4 ≤ 20, and the last
  // 4 1/4 in square beside that column makes 20 in.
  test('a fat eighth for two squares of 5 3/4 in and three of 4 1/4 in', () => {
    expect(sheetsFor([square(23, 2), square(17, 3)], FAT_EIGHTH)).toBe(1);
  });

  // Geometry: nine squares of 5 1/2 in take 16 1/2 × 16 1/2 in of 20 × 18 in; eight of 2 in stand in the 3 1/2 in beside them.
  test('a fat quarter for nine squares of 5 1/2 in and eight of 2 in', () => {
    expect(sheetsFor([square(22, 9), square(8, 8)], FAT_QUARTER)).toBe(1);
  });

  /** Random lists of up to eight pieces that fill 55 to 100 % of one sheet. */
  const randomList = (roll: (sides: number) => number, [width, height]: Sides): SmallPiece[] => {
    for (;;) {
      const turn = roll(4) > 0;
      const list = Array.from({ length: 1 + roll(6) }, (): SmallPiece => {
        const side = 6 + roll(Math.min(width, height) - 6);
        const [w, h] = roll(3) ? [side, 6 + roll(Math.max(width, height) - 6)] : [side, side];
        return { width: w, height: h, count: 1 + roll(4), turn };
      });
      const part = area(list) / (width * height);
      if (total(list) <= 8 && part >= 0.55 && part <= 1 && fitsSheet(list, width, height)) return list;
    }
  };

  test.each([
    ['a fat quarter', [FAT_QUARTER], 700],
    ['a fat eighth', [FAT_EIGHTH], 700],
    ['other sheets', ODD, 700],
  ])('%s, whenever every way of cutting was tried and one does', (_, sheets, lists) => {
    const roll = dice(lists + sheets[0]![1]);
    const above: unknown[] = [];
    for (let i = 0; i < lists; i++) {
      const sides = sheets[roll(sheets.length)]!;
      const list = randomList(roll, sides);
      if (sheetsFor(list, sides) > 1) above.push({ list, sides });
    }
    expect(above).toEqual([]);
  });

  // Geometry: the sheet itself is cut up, edge to edge, into pieces; they all go back onto it.
  test('pieces that one sheet was cut into fit on one sheet', () => {
    const roll = dice(8);
    const above: unknown[] = [];
    for (let i = 0; i < 200; i++) {
      const sides = [FAT_QUARTER, FAT_EIGHTH, ...ODD][roll(7)]!;
      const list = cutUp(roll, sides, 3 + roll(6));
      if (sheetsFor(list, sides) > 1) above.push({ list, sides });
    }
    expect(above).toEqual([]);
  });
});

describe('pieces that may be turned never take more sheets than those that may not', () => {
  const compare = (list: SmallPiece[], [width, height]: Sides): [number, number] => {
    const oneWay = list.map((one) => ({ ...one, turn: false }));
    const eitherAcross: Sides[] = [
      [width, height],
      [height, width],
    ];
    const fixed = eitherAcross
      .filter((sides) => list.every((one) => one.width <= sides[0] && one.height <= sides[1]))
      .map((sides) => sheetsFor(oneWay, sides));
    return [sheetsFor(list, [width, height]), Math.min(...fixed)];
  };

  const random = (roll: (sides: number) => number, sides: Sides): SmallPiece[] => {
    const kinds = 1 + roll(6);
    const most = [4, 4, 4, 30][roll(4)]!;
    return Array.from({ length: kinds }, (): SmallPiece => ({
      width: 6 + roll(Math.min(...sides) - 6),
      height: 6 + roll(Math.max(...sides) - 6),
      count: 1 + roll(Math.ceil(most / kinds)),
      turn: true,
    }));
  };

  test.each([
    ['random ones', 150, random],
    ['a cut-up sheet', 60, (roll, sides) => cutUp(roll, sides, 4 + roll(12))],
    [
      'two cut-up sheets',
      40,
      (roll, sides) => [...cutUp(roll, sides, 6), ...cutUp(roll, sides, 4 + roll(6))],
    ],
  ] satisfies [string, number, typeof random][])('%s', (_, lists, make) => {
    const roll = dice(lists);
    const above: unknown[] = [];
    for (let i = 0; i < lists; i++) {
      const sides = [FAT_QUARTER, FAT_EIGHTH, ...ODD][roll(7)]!;
      const list = make(roll, sides);
      const [free, fixed] = compare(list, sides);
      if (free > fixed) above.push({ list, sides, free, fixed });
    }
    expect(above).toEqual([]);
  });
});
