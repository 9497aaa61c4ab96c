import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rollPlans } from '../../src/planner/rolls.js';
import { exact } from '../../src/measure/exact.js';

const inches = (...values: number[]) => values.map((value) => exact(value));
const plans = (rolls: number[], width: number, length: number) =>
  rollPlans(inches(...rolls), { width: exact(width), length: exact(length) }).map(
    ({ roll, lengths, each, direction, fabric }) => [
      roll.valueOf(),
      lengths,
      each.valueOf(),
      direction,
      fabric.valueOf(),
    ],
  );

describe('lengths of a roll', () => {
  // geometry: a roll 96 in wide covers 66 by 78 in with one length, either way round; 66 in is the shorter
  test('one length, the way round that takes less', () => {
    expect(plans([96], 66, 78)).toEqual([[96, 1, 66, 'crosswise', 66]]);
    expect(plans([70], 66, 78)).toEqual([
      [70, 1, 78, 'lengthwise', 78],
      // 2 × 66 = 132 saves nothing, so it is not named
    ]);
  });

  test('two lengths where that takes less, after one', () => {
    // 60 in covers 58 in with one length of 118; two of 58 reach across 118 and take 116
    expect(plans([60], 58, 118)).toEqual([
      [60, 1, 118, 'lengthwise', 118],
      [60, 2, 58, 'crosswise', 116],
    ]);
  });

  test('more than two only where no roll does with two', () => {
    expect(plans([45, 90], 170, 170)).toEqual([[90, 2, 170, 'lengthwise', 340]]);
    expect(plans([45, 90], 200, 200).map(([roll, lengths]) => [roll, lengths])).toEqual([
      [90, 3],
      [45, 5],
    ]);
  });

  test('every way covers the piece, and the first is the best', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 20, max: 130 }), { minLength: 1, maxLength: 6 }),
        fc.integer({ min: 5, max: 150 }),
        fc.integer({ min: 5, max: 150 }),
        (rolls, width, length) => {
          const found = plans(rolls, width, length) as [number, number, number, string, number][];
          for (const [roll, lengths, each, direction, fabric] of found) {
            const [across, along] = direction === 'lengthwise' ? [width, length] : [length, width];
            expect(lengths * roll).toBeGreaterThanOrEqual(across);
            expect((lengths - 1) * roll).toBeLessThan(across);
            expect(each).toBe(along);
            expect(fabric).toBe(lengths * along);
          }
          // every way there is, worked out without the planner
          const ways = rolls.flatMap((roll) => [
            { lengths: Math.ceil(width / roll), area: Math.ceil(width / roll) * length * roll },
            { lengths: Math.ceil(length / roll), area: Math.ceil(length / roll) * width * roll },
          ]);
          const fewest = Math.min(...ways.map(({ lengths }) => lengths));
          const [roll, lengths, , , fabric] = found[0]!;
          expect(lengths).toBe(fewest);
          expect(roll * fabric).toBe(
            Math.min(...ways.filter((way) => way.lengths === fewest).map(({ area }) => area)),
          );
          expect(fewest > 2 || found.every(([, lengths]) => lengths <= 2)).toBe(true);
        },
      ),
      { numRuns: 500 },
    );
  });
});
