import { describe, expect, test } from 'vitest';
import { packagesField } from '../../src/calculators/batting/packages.js';
import { Refusal } from '../../src/ledger/refusal.js';
import type { Style } from '../../src/measure/format.js';
import { batting } from '../../src/words/en/batting.js';
import { english } from '../sentences.js';

const t = english(batting);

const inches: Style = { units: 'in' };
const readPackages = (raw: unknown, style: Style) => packagesField.read(raw, style, 'packages');
const writePackages = (raw: unknown): string => packagesField.write!([], inches, raw);
const read = (raw: unknown, style = inches) =>
  readPackages(raw, style).map(({ name, width, length, price }) => [
    typeof name === 'string' ? name : t.say(name),
    width.toFraction(true),
    length.toFraction(true),
    ...(price ? [price.valueOf()] : []),
  ]);

const refusalOf = (raw: unknown): string => {
  try {
    readPackages(raw, inches);
  } catch (refusal) {
    if (refusal instanceof Refusal) return t.say(refusal.problem);
    throw refusal;
  }
  return expect.fail('That was read.');
};

describe('a list of packages', () => {
  test.each<[unknown, unknown[][]]>([
    [
      'small 40 x 50 @ 12.50; large 90 x 100 @ 29',
      [
        ['small', '40', '50', 12.5],
        ['large', '90', '100', 29],
      ],
    ],
    ['twin 72×90', [['twin', '72', '90']]],
    ['Extra large: 90 1/2 by 100; ', [['Extra large', '90 1/2', '100']]],
    ['size 2 40in x 50in @ $9', [['size 2', '40', '50', 9]]],
    ['box 5 x 6', [['box', '5', '6']]],
    ['40x50', [['', '40', '50']]],
    // a name that ends in a number does not run into the width: half a yard, not two and a half
    [[{ name: 'pack 2', width: '1/2 yd', length: 40 }], [['pack 2', '18', '40']]],
    [`crib 3' 9" x 5'`, [['crib', '45', '60']]],
    // a unit that stands once holds for both: 127 cm = 50 in
    ['baby 127 x 254 cm @ 12,50', [['baby', '50', '100', 12.5]]],
    [
      [
        { name: 'small', width: 40, length: '50', price: 12.5 },
        'large 90 x 100',
        { width: '1 yd', length: '40' },
      ],
      [
        ['small', '40', '50', 12.5],
        ['large', '90', '100'],
        ['', '36', '40'],
      ],
    ],
  ])('%j', (raw, expected) => expect(read(raw)).toEqual(expected));

  test('bare numbers are in the page’s units', () =>
    expect(read('baby 127 x 254', { units: 'cm' })).toEqual([['baby', '50', '100']]));

  test('is written as it is read', () => {
    const list = [
      { name: 'small', width: 40, length: '50', price: 12.5 },
      { width: '1 yd', length: 40 },
      'a 3 x 4',
    ];
    expect(writePackages(list)).toBe('small: 40 x 50 @ 12.5; 1 yd x 40; a 3 x 4');
    expect(read(writePackages(list))).toEqual(read(list));
    expect(writePackages('small 40 x 50')).toBe('small 40 x 50');
  });

  test.each<[unknown, string]>([
    [
      'small 40 x 50; large 90; twin 72 x 90',
      '“large 90” is not a package. Write it like large 90 x 100 @ 29.',
    ],
    ['small 40 x fifty', '“small 40 x fifty” is not a package.'],
    ['small 40 x 0', '“small 40 x 0”: The length has to be more than 0.'],
    ['small 40 x 50 60', '“small 40 x 50 60” is not a package.'],
    [
      'small 40 x 50 @ cheap',
      '“small 40 x 50 @ cheap”: “ cheap” is not a number. Write it like 12.50 or 1250.',
    ],
    ['small 40 x 50 @', 'is not a package.'],
    ['small 40 x 50 @ 3 @ 4', 'is not a package.'],
    ['<img onerror=x>', '“<img onerror=x>” is not a package.'],
    [`a ${'9'.repeat(10_000)} x 5`, 'is not a package.'],
    [' ; ;', 'A list has 1 to 50 packages.'],
    [[], 'A list has 1 to 50 packages.'],
    [{ name: 'small', width: 40, length: 50 }, 'A list has 1 to 50 packages.'],
    [[{ name: 'small', width: 40 }], '“small: 40 x” is not a package.'],
    [
      [
        { name: 'small', width: 40, length: 50 },
        { name: 'odd', width: {}, length: 2 },
      ],
      '“odd:  x 2” is not a package.',
    ],
    [
      [{ name: 'small', width: 40, length: 50, price: 'abc' }],
      '“small: 40 x 50 @ abc”: “ abc” is not a number.',
    ],
    [[null], 'A list has 1 to 50 packages.'],
    [Array.from({ length: 51 }, () => 'a 4 x 5'), 'A list has 1 to 50 packages.'],
  ])('%j is refused, and the entry named', (raw, words) => expect(refusalOf(raw)).toContain(words));
});
