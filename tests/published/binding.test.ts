import { describe, expect, test } from 'vitest';
import { exact } from '../../src/measure/exact.js';
import { reckonBinding } from '../../src/reckon.js';

describe('published examples', () => {
  test('50 × 60 in quilt, 40 in cloth, 2 in strips: 6 strips (Castilleja Cotton, June 2013)', () => {
    const result = reckonBinding({ width: 50, length: 60, fabricWidth: 40, stripWidth: 2 });
    expect(result).toMatchObject({ strips: 6 });
  });

  test('40 × 50 in quilt, 40 in cloth, 2 1/2 in strips: 5 strips, 12 1/2 in of cloth (Always in Stitches, 3 August 2009)', () => {
    const result = reckonBinding({ width: 40, length: 50, fabricWidth: 40, stripWidth: '2 1/2' });
    expect(result).toMatchObject({ strips: 5, fabric: '12 1/2' });
  });

  test('250 in of 2 in bias: a 23 in square by area (“Making continuous piping strips / bias binding”, MyDecozo forum)', () => {
    const result = reckonBinding({ perimeter: 250, allowance: 0, stripWidth: 2, cut: 'bias' });
    expect(result).toMatchObject({ byArea: '23' });
    // the square that is cut is larger: of 23 in the last round would be too narrow (tests/planner/bias.test.ts)
    expect(result).toMatchObject({ square: '24' });
  });

  test('100 in of 3 1/2 in bias: at least a 19 in square by area, and a slightly bigger one to be sure (“How do I calculate how much fabric I need for bias binding”, Quilter’s Question Time, 5 August 2021)', () => {
    const result = reckonBinding({ perimeter: 100, allowance: 0, stripWidth: '3 1/2', cut: 'bias' });
    if (result.errors) return expect.fail(result.errors[0]!.message);
    // 19 in, √350 up to a whole inch, leaves the tube's two seams out; by area they take it to 20 in
    expect(result.byArea).toBe('20');
    expect(exact(result.square!).gt(19)).toBe(true);
  });
});
