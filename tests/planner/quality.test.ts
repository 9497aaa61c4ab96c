import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { checkPlan } from '../../src/planner/check.js';
import { planCloth, type Cloth, type CutPiece, type CuttingPlan } from '../../src/planner/plan.js';
import { exact } from '../../src/measure/exact.js';
import { dice } from './seeded.js';

/** How good plans are, as counts: what is written here is what the planner reaches, and it may only become less. */

/** The plan's length or its sheets; a plan that cannot be cut fails. */
const taken = (pieces: CutPiece[], cloth: Cloth): number => {
  const plan = planCloth(pieces, cloth) as CuttingPlan;
  expect(checkPlan(pieces, cloth, plan)).toEqual([]);
  return cloth.height ? plan.count : plan.length.valueOf();
};

const DATA = fileURLToPath(new URL('../../../shared/data/strip-packing.json', import.meta.url));

// Heights of published strip packing problems, each the best that is known for cuts in any order: 20, 15, 30, 60, 90.
test.for([
  ['C1', 20],
  ['C2', 15],
  ['C3', 31],
  ['C4', 61],
  ['C5', 91],
] as const)('%s of the published problems is packed no higher than %i', ([name, ceiling], { skip }) => {
  skip(!existsSync(DATA), 'there is no file strip-packing.json where it was looked for');
  const { problems } = JSON.parse(readFileSync(DATA, 'utf8')) as {
    problems: Record<string, { width: number; items: [number, number][] }>;
  };
  const [, { width, items }] = Object.entries(problems).find(([title]) => title.startsWith(name))!;
  const pieces = items.map(([height, width]) => ({
    width: exact(width),
    height: exact(height),
    count: 1,
    turn: true,
  }));
  expect(taken(pieces, { width: exact(width) })).toBeLessThanOrEqual(ceiling);
});
/** Cut sizes of real quilts, in eighths of an inch: 1 1/2, 2, 2 1/2, 3 1/2, 3 7/8, 4 1/4, 4 1/2, 4 7/8, 5 1/4, 6 1/2, 8 1/2, 12 1/2. */
const SIZES = [12, 16, 20, 28, 31, 34, 36, 39, 42, 52, 68, 100];

/** Lists like a quilt's, the same in every run. */
const quilts = (seed: number, lists: number, kinds: number, most: number): CutPiece[][] => {
  const roll = dice(seed);
  return Array.from({ length: lists }, () =>
    Array.from({ length: kinds }, () => {
      const width = SIZES[roll(SIZES.length)]!;
      const height = roll(2) ? width : SIZES[roll(SIZES.length)]!;
      return { width: exact(width, 8), height: exact(height, 8), count: 1 + roll(most), turn: roll(4) > 0 };
    }),
  );
};
const all = (lists: CutPiece[][], cloth: Cloth): number =>
  lists.reduce((sum, pieces) => sum + taken(pieces, cloth), 0);

test.each([
  [4, 20, 823.75],
  [6, 30, 1537.375],
  [10, 12, 989.625],
])('quilts of %i sizes, up to %i of each, take no more than %f in of cloth', (kinds, most, ceiling) => {
  expect(all(quilts(kinds, 24, kinds, most), { width: exact(40) })).toBeLessThanOrEqual(ceiling);
});

// Worked out here: the same pieces need the same cloth, in whatever order somebody wrote them.
test.each([
  ['cloth by length', { width: exact(40) }],
  ['fat quarters', { width: exact(20), height: exact(18) }],
])('the order of a list does not matter on %s', (_, cloth) => {
  const roll = dice(16);
  for (const pieces of quilts(15, 40, 5, 12)) {
    const other = pieces
      .map((piece) => ({ piece, at: roll(1000) }))
      .sort((a, b) => a.at - b.at)
      .map(({ piece }) => piece);
    expect(taken(other, cloth)).toBe(taken(pieces, cloth));
  }
});

test.each([
  [6, 3, 18],
  [10, 6, 41],
])('quilts of %i sizes, up to %i of each, take no more than %i fat quarters', (kinds, most, ceiling) => {
  expect(all(quilts(kinds, 12, kinds, most), { width: exact(20), height: exact(18) })).toBeLessThanOrEqual(
    ceiling,
  );
});
