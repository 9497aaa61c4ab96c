import { describe, expect, test } from 'vitest';
import { sentence } from '../sentences.js';
import { checkPlan } from '../../src/planner/check.js';
import { planCloth, type CuttingPlan } from '../../src/planner/plan.js';
import { exact } from '../../src/measure/exact.js';

type Sizes = [width: number, height: number, count: number][];

/** A plan on cloth 40 in wide that the checker passes. */
const plan = (sizes: Sizes): CuttingPlan => {
  const pieces = sizes.map(([width, height, count]) => ({
    width: exact(width),
    height: exact(height),
    count,
    turn: true,
  }));
  const cloth = { width: exact(40) };
  const found = planCloth(pieces, cloth);
  if (!found.ok) throw new Error(sentence(found.problem));
  expect(checkPlan(pieces, cloth, found)).toEqual([]);
  return found;
};

describe('what only a search finds', () => {
  // Geometry: nothing takes less than the area of its pieces; whole sizes come to a whole length. Putting the largest or
  // the tallest first takes 1 to 4 in more.
  test.each<[string, Sizes]>([
    [
      '22 in',
      [
        [5, 9, 2],
        [7, 6, 6],
        [3, 4, 5],
        [11, 10, 4],
      ],
    ],
    [
      '26 in',
      [
        [4, 11, 3],
        [11, 10, 7],
        [7, 5, 3],
        [2, 2, 3],
      ],
    ],
    [
      '29 in',
      [
        [6, 8, 7],
        [10, 6, 4],
        [4, 5, 5],
        [9, 10, 5],
      ],
    ],
    [
      '32 in',
      [
        [9, 3, 6],
        [9, 10, 4],
        [6, 8, 8],
        [7, 6, 8],
      ],
    ],
  ])('a plan of %s, which is all that the pieces’ area takes', (length, sizes) => {
    const area = sizes.reduce((all, [width, height, count]) => all + width * height * count, 0);
    expect(`${Math.ceil(area / 40)} in`).toBe(length);
    expect(`${plan(sizes).length.toFraction()} in`).toBe(length);
  });

  test('strips all of one height, where others that take as much cloth have three', () => {
    // Geometry: two strips of 9 in hold 4 and 3 of the first, upright, beside 3 and 6 of the second in stacks of three.
    const { length, sheets } = plan([
      [9, 6, 7],
      [10, 3, 9],
    ]);
    expect(length.toFraction()).toBe('18');
    expect(new Set(sheets[0]!.strips.map(({ height }) => height.toFraction())).size).toBe(1);
  });
});
