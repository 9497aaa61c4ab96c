import { describe, expect, it } from 'vitest';
import { faultIn, readFormula } from './reader.js';

// The rules are those of school: brackets first, × and ÷ before + and −, from the left.
describe('the reader of formulas', () => {
  it.each([
    ['58 + 2 × 4', 66],
    ['2 × 40 − 2 × 1/2', 79],
    ['(58 + 70) × 2', 256],
    ['100 − 40 − 20', 40],
    ['100 ÷ 10 ÷ 5', 2],
    ['100 ÷ (10 ÷ 5)', 50],
    ['12 3/8 − 3/8', 12],
    ['112 ÷ (1 − 3 %)', 112 / 0.97],
    ['√(9 + 16)', 5],
    ['12 × √2 + 1', 12 * Math.SQRT2 + 1],
    ['147,32 + 2 × 10', 167.32],
    ['30 + 12, rounded up to whole repeats of 24', 48],
    ['-1 1/2 + 2', 0.5],
  ])('reads %s as %d', (text, value) => {
    const { low, high } = readFormula(text, 'in');
    expect([low, high]).toEqual([expect.closeTo(value, 9), expect.closeTo(value, 9)]);
  });

  it('takes what was rounded for all that it may have been', () => {
    expect(readFormula('2 × ≈10 1/16', 'in')).toEqual({ low: 20.0625, high: 20.1875 });
    expect(readFormula('2 × ≈10.1', 'cm')).toEqual({
      low: expect.closeTo(20.1, 9) as number,
      high: expect.closeTo(20.3, 9) as number,
    });
  });

  it.each([
    '58 + 2 × 4 = 66 in',
    '3 × ≈12 1/16 ≈ 36 1/4 in',
    '10 × √2 ≈ 14 1/8 in',
    '100 × (1 − 3 %) = 97 cm',
    '7 = 7',
  ])('finds nothing wrong with %s', (how) => {
    expect(faultIn(how, how.endsWith('cm') ? 'cm' : 'in')).toBeUndefined();
  });

  it.each([
    '58 + 2 × 4 = 67 in',
    '58 + 2 × 4 = 66 1/64 in',
    '3 × ≈12 1/16 ≈ 36 3/8 in',
    '10 × √2 ≈ 14 1/4 in',
    '(58 + 2) × 4 = 66 in',
    '58 + 2 × (4 = 66 in',
    '58 + about 8 = 66 in',
    '58 + = 66 in',
    '58 8 = 66 in',
    '66 in',
  ])('finds something wrong with %s', (how) => expect(faultIn(how, 'in')).toBeDefined());
});
