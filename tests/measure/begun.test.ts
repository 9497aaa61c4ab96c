import { describe, expect, test } from 'vitest';
import { exact } from '../../src/measure/exact.js';
import { bothSides, isBegun, parseLength, placesOf, sameUnit } from '../../src/measure/parse.js';

const reads = (text: string): boolean => {
  const read = parseLength(text);
  return read.ok && read.value.gt(0);
};

describe('A text that may still become a length', () => {
  test.each([
    ['61 1', '61 1/2'],
    ['61 1/', '61 1/2'],
    ['61 1/1', '61 1/16'],
    ['61 11', '61 11/16'],
    ['1 yd 1', '1 yd 16 in'],
    ['1 y', '1 yd'],
    ['132 c', '132 cm'],
    ['52 inc', '52 inches'],
    ['3 *', '3 * 12'],
    ['(2 +', '(2 + 4)'],
    ['((2 + 4) * ', '((2 + 4) * 3)'],
    ['60 -', '60 - 1/2'],
    ['0', '0.5'],
    ['0.', '0.5'],
  ])('“%s”, as in %s', (text, whole) => {
    expect([reads(text), isBegun(text, reads)]).toEqual([false, true]);
    expect([reads(whole), isBegun(whole, reads)]).toEqual([true, false]);
  });

  test.each(['', '  ', 'abc', '58 70', '1/0', '-', '-5', '9 miles', '1e999', '2, wide', 'NaN', '61 1/2 1/'])(
    '“%s” may not',
    (text) => expect(isBegun(text, reads)).toBe(false),
  );

  test('of a very long text comes to an end', () => expect(isBegun('('.repeat(100_000), reads)).toBe(false));
});

describe('Both sides of a quilt in the place of one', () => {
  test.each(['60x72', '60 x 72', '60 × 72', '60X72', '60 by 72'])('%s', (text) =>
    expect(bothSides(text, {})).toEqual(['60', '72']),
  );
  test('with units, and in centimetres', () => {
    expect(bothSides('5 ft x 72 in', {})).toEqual(['5 ft', '72 in']);
    expect(bothSides('20 x 30', { units: 'cm' })).toEqual(['20', '30']);
  });
  // Blocks of 12 in, five of them: a quilt of 5 in is none.
  test.each([
    '5 x 12',
    '12 1/2 x 3',
    '(12 + 4) × 13',
    '= 12 x 12',
    '60',
    '60 x',
    '10 x 12 x 14',
    '60 x wide',
  ])('%s is none', (text) => expect(bothSides(text, {})).toBeUndefined());
});

// 1/3 = 0.333… and 2/3 = 0.666…: long division.
test.each([
  ['0.3333333', 1, 3],
  ['0.6666667', 2, 3],
  ['0.6666', 2, 3],
  ['22.66667', 68, 3],
])('%s is so many thirds', (text, top, bottom) =>
  expect(parseLength(text)).toEqual({ ok: true, value: exact(top, bottom) }),
);
test.each(['0.333', '0.3334', '0.9999', '1.0001', '0.3125', '59.9999'])('%s is what it says', (text) =>
  expect(parseLength(text)).toEqual({ ok: true, value: exact(text) }),
);

test.each(['60 1 / 2', '60 1/ 2', '60 1 /2', '60 1÷2', '60-1 / 2', '60-1/ 2', '5 ft 0 1 / 2'])(
  '%s is 60 1/2',
  (text) => expect(parseLength(text)).toEqual({ ok: true, value: exact(121, 2) }),
);
test('three numbers with a slash that are no mixed number stay apart', () => {
  expect(parseLength('60 12 / 4').ok).toBe(false);
  expect(parseLength('60-12 / 4').ok).toBe(false);
  expect(parseLength('1 / 2')).toEqual({ ok: true, value: exact(1, 2) });
  expect(parseLength('60 - 1 / 2')).toEqual({ ok: true, value: exact(119, 2) });
});

test('a word behind a length that has its unit is no unit of it', () =>
  expect(sameUnit('2 in', 'wide')).toBe('2 in'));

test.each([
  ['2, , 4', ['2', '', '4']],
  ['2, 4,', ['2', '4']],
  ['2, ,', ['2', '']],
  ['', []],
])('The places of “%s”', (text, places) => expect(placesOf(text)).toEqual(places));
