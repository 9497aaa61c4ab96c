import { describe, expect, test } from 'vitest';
import { FAT_QUARTER_SQUARES } from './charts.js';
import { reckonCutting, type CuttingResult } from '../../src/reckon.js';

const good = (input: Parameters<typeof reckonCutting>[0]): CuttingResult => {
  const result = reckonCutting(input);
  if (result.errors) throw new Error(result.errors[0]!.message);
  return result;
};

describe('squares from an 18 × 22 in fat quarter (“Number of squares from a fat quarter”, Pieceful Living, 13 August 2011)', () => {
  test.each(FAT_QUARTER_SQUARES)('%s in: %d of them, and not one more', (side, most) => {
    const sheets = (count: number): number | undefined =>
      good({ list: `A | square | ${side} | ${count}`, sheet: '18 x 22' }).sheets;
    expect([sheets(most), sheets(most + 1)]).toEqual([1, 2]);
  });
});

describe('triangle squares', () => {
  const cutTo = (piece: string, finished: string): string | undefined =>
    good({ list: `A | ${piece} | ${finished} finished | 12` }).cuts[0]?.width;

  test('3 in finished: 3 7/8 in for half-square, 4 1/4 in for quarter-square triangles (“Cutting half- and quarter-square triangles”, All People Quilt)', () => {
    expect(cutTo('half-square triangles', '3')).toBe('3 7/8');
    expect(cutTo('quarter-square triangles', '3')).toBe('4 1/4');
  });

  test('2 in finished: 2 7/8 in squares for half-square triangles (“How to measure and cut triangles”, Granny Maud’s Girl, 11 June 2018)', () => {
    expect(cutTo('half-square triangles', '2')).toBe('2 7/8');
  });

  test('a half-square triangle is half of its square, a quarter-square triangle a quarter (geometry)', () => {
    const squares = (piece: string): number | undefined =>
      good({ list: `A | ${piece} | 3 | 9` }).cuts[0]?.count;
    expect([
      squares('half-square triangles'),
      squares('quarter-square triangles'),
      squares('squares'),
    ]).toEqual([5, 3, 9]);
  });
});
