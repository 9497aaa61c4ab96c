import { describe, expect, test } from 'vitest';
import { sameUnit, splitList, splitSize } from '../../src/measure/parse.js';

describe('splitList', () => {
  test.each([
    ['2, 4 1/2', ['2', '4 1/2']],
    ['2,4', ['2', '4']],
    ['2; 4,5', ['2', '4', '5']],
    [' 2 ,, 4; ', ['2', '4']],
    ['', []],
    [' ; , ', []],
    ['2 in, 5 cm', ['2 in', '5 cm']],
    ['2, 3, 5 cm', ['2 cm', '3 cm', '5 cm']],
  ])('of “%s”', (text, parts) => expect(splitList(text)).toEqual(parts));

  test.each([
    ['2, 4,5', ['2', '4,5']],
    ['2,4', ['2,4']],
    ['2; 4,5', ['2', '4,5']],
    ['2 in,4 in', ['2 in', '4 in']],
    ['2½,4', ['2½', '4']],
    ['2; ,5', ['2', ',5']],
    ['2,5, 3,5 cm', ['2,5 cm', '3,5 cm']],
  ])('of “%s” where a comma marks decimals', (text, parts) => expect(splitList(text, true)).toEqual(parts));

  test('of a very long text comes to an end', () => {
    expect(splitList(' '.repeat(100_000))).toEqual([]);
    expect(splitList(','.repeat(100_000), true)).toEqual([]);
    expect(splitList('2,'.repeat(10_000))).toHaveLength(10_000);
  });
});

describe('splitSize', () => {
  test.each([
    ['60 x 80', ['60', '80']],
    ['60x80', ['60', '80']],
    ['60 X 80', ['60', '80']],
    ['60 × 80', ['60', '80']],
    ['60 by 80', ['60', '80']],
    ['  60 in x 80 1/2 in ', ['60 in', '80 1/2 in']],
    ['150 x 200 cm', ['150 cm', '200 cm']],
    ['60" x 2 m', ['60"', '2 m']],
  ])('of “%s”', (text, sides) => expect(splitSize(text)).toEqual(sides));

  test.each(['60', '60 x', 'x 80', 'x', '', '60 x 80 x 90', '60 80', '60 x  x 80'])(
    'of “%s” finds no two sides',
    (text) => expect(splitSize(text)).toBeUndefined(),
  );

  test('of a very long text comes to an end', () => {
    expect(splitSize(' '.repeat(100_000))).toBeUndefined();
    expect(splitSize('x'.repeat(100_000))).toBeUndefined();
  });
});

describe('sameUnit', () => {
  test.each([
    ['60', '80 cm', '60 cm'],
    ['60', '80cm', '60 cm'],
    ['60', '80"', '60 "'],
    ['60 1/2', '80 in.', '60 1/2 in'],
    ['60', '80', '60'],
    ['60', '4½', '60'],
    ['60 in', '80 cm', '60 in'],
    ['60"', '80 cm', '60"'],
    // Two units behind one number say nothing of the other.
    ['60', `6' 8"`, '60'],
    ['60', '6 ft 8 in', '60'],
  ])('%s beside %s is %s', (first, second, with_) => expect(sameUnit(first, second)).toBe(with_));
});
