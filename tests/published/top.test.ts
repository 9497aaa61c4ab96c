import { describe, expect, test } from 'vitest';
import { SETTING_TRIANGLES } from './charts.js';
import { reckonTop, type TopResult } from '../../src/reckon.js';

const good = (input: Parameters<typeof reckonTop>[0]): TopResult => {
  const result = reckonTop(input);
  if (result.errors) throw new Error(result.errors[0]!.message);
  return result;
};

describe('setting triangles (“Setting triangles” chart, lukas.is-a-geek.org/tani/chart.htm)', () => {
  test.each(SETTING_TRIANGLES)(
    'a %s in block takes squares of %s in and %s in',
    (block, sideSquare, cornerSquare) => {
      const result = good({ block, across: 3, down: 4, set: 'on-point' });
      expect(result).toMatchObject({ sideSquare, cornerSquare });
      const squares = result.pieces.map(({ width, length, count }) => ({ width, length, count }));
      // 2 × 2 + 2 × 3 = 10 side triangles, four from a square; 4 corners, two from a square
      expect(squares).toEqual([
        { width: sideSquare, length: sideSquare, count: 3 },
        { width: cornerSquare, length: cornerSquare, count: 2 },
      ]);
    },
  );
});
