import { describe, expect, test } from 'vitest';
import { reckonTop, type TopResult } from '../../src/reckon/top.js';

const good = (input: Parameters<typeof reckonTop>[0]): TopResult => {
  const result = reckonTop(input);
  if (result.errors) throw new Error(result.errors[0]!.message);
  return result;
};

// "Setting triangles" chart, lukas.is-a-geek.org/tani/chart.htm: finished block, square for four side triangles, square
// for two corner triangles, in inches, rounded up to 1/8
const CHART = [
  ['5', '8 3/8', '4 1/2'],
  ['6', '9 3/4', '5 1/8'],
  ['7', '11 1/4', '5 7/8'],
  ['8', '12 5/8', '6 5/8'],
  ['9', '14', '7 1/4'],
  ['10', '15 1/2', '8'],
  ['11', '16 7/8', '8 3/4'],
  ['12', '18 1/4', '9 3/8'],
  ['13', '19 3/4', '10 1/8'],
  ['14', '21 1/8', '10 7/8'],
  ['15', '22 1/2', '11 1/2'],
  ['16', '23 7/8', '12 1/4'],
] as const;

describe('setting triangles (“Setting triangles” chart, lukas.is-a-geek.org/tani/chart.htm)', () => {
  test('the chart goes from 5 to 16 in', () => {
    expect(CHART.map(([block]) => Number(block))).toEqual(Array.from({ length: 12 }, (_, at) => at + 5));
  });

  test.each(CHART)('a %s in block takes squares of %s in and %s in', (block, sideSquare, cornerSquare) => {
    const result = good({ block, across: 3, down: 4, set: 'on-point' });
    expect(result).toMatchObject({ sideSquare, cornerSquare });
    const squares = result.pieces.map(({ width, length, count }) => ({ width, length, count }));
    // 2 × 2 + 2 × 3 = 10 side triangles, four from a square; 4 corners, two from a square
    expect(squares).toEqual([
      { width: sideSquare, length: sideSquare, count: 3 },
      { width: cornerSquare, length: cornerSquare, count: 2 },
    ]);
  });
});
