import { describe, expect, test } from 'vitest';
import { reckonSleeve } from '../../src/reckon.js';
import { answersOf, errorsOf, row } from './asked.js';

const sleeve = answersOf(reckonSleeve);

describe('a hanging sleeve', () => {
  // Geometry: the ends are 1 in short of each side, 38 in; each end is turned twice by 1/2 in, 38 + 4 × 1/2 = 40 in.
  test('is cut as long as the quilt is wide, with the usual hems', () => {
    const result = sleeve({ width: 40 });
    expect(row(result, 'finished').inches).toBe('38');
    expect(row(result, 'cutLength').how).toBe('38 + 4 × 1/2 = 40 in');
    expect([result.strips, result.fabric]).toEqual([1, '8 1/2']);
    expect(result.cuts).toEqual([
      { count: 1, piece: 'sleeve', width: '8 1/2', length: '40', text: '8 1/2 × 40 in' },
    ]);
  });

  // "2023 quilt show quilt sleeve instructions", Hill Country Quilt Guild: 8 1/2 in strips, 6 1/2 in for a 3 in sleeve.
  test.each([
    ['8 1/2', '4'],
    ['6 1/2', '3'],
  ])('of a strip of %s in is %s in deep', (stripWidth, depth) =>
    expect(sleeve({ width: 40, stripWidth }).finished.length).toBe(depth),
  );

  // Geometry: 70 in of 40 in cloth: 2 strips reach 2 × 40 − 2 × 1/4 = 79 1/2 in; 2 × 8 1/2 = 17 in.
  test('is joined where the quilt is wider than the cloth', () => {
    const result = sleeve({ width: 70 });
    expect([result.strips, result.fabric, result.buy.text]).toEqual([2, '17', '1/2 yd']);
    expect(row(result, 'strips').how).toBe('2 × 40 − 2 × 1/4 = 79 1/2 ≥ 70 in');
  });

  test('takes more cloth before a wash', () => {
    // Geometry: 8 1/2 ÷ (1 − 15 %) = 10 in; 38.25 in of cloth are left of 45, and 38 in are needed.
    expect(sleeve({ width: 38, fabricWidth: 45, shrinkage: 15 }).fabric).toBe('10');
  });

  test.each([
    [{ width: 2 }, 'width'],
    [{ width: 40, stripWidth: '1/2' }, 'stripWidth'],
    [{ width: 40, fabricWidth: '1/4' }, 'fabricWidth'],
    [{ width: '' }, 'width'],
  ])('of %j is refused at %s', (input, at) => expect(errorsOf(reckonSleeve)(input)[0]).toBe(at));
});
