import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sentence } from '../sentences.js';
import { inUnit, parseLength, splitList, splitSize } from '../../src/measure/parse.js';
import { fractions } from './arbitraries.js';

const valueOf = (text: string, units: 'in' | 'cm', bare?: 'in' | 'cm'): string => {
  const parsed = parseLength(text, { units, bare });
  return parsed.ok ? parsed.value.toFraction() : sentence(parsed.problem);
};

describe('a text with its unit', () => {
  test.each([
    ['58', '58 cm'],
    ['52½', '52½ cm'],
    ['=3 * 12 + 4', '(3 * 12 + 4) cm'],
    ['-5', '(-5) cm'],
    ['3 x 12', '(3 x 12) cm'],
    // One of its own stays, and so does what holds no number.
    ['58 in', '58 in'],
    [`4' 4"`, `4' 4"`],
    ['abc', 'abc'],
    ['', ''],
  ])('%s is %s', (text, written) => expect(inUnit(text, 'cm')).toBe(written));

  test('means what it meant where bare numbers are in that unit', () => {
    const number = fractions().map((value) => value.toFraction(true));
    const text = fc.oneof(
      number,
      fc
        .tuple(number, fc.constantFrom(' + ', ' - ', ' * '), number)
        .map(([a, sign, b]) => a + sign + `(${b})`),
    );
    fc.assert(
      fc.property(text, fc.constantFrom('in' as const, 'cm' as const), (text, unit) => {
        const other = unit === 'in' ? 'cm' : 'in';
        expect(valueOf(inUnit(text, unit), other)).toBe(valueOf(text, unit));
        expect(valueOf(text, other, unit)).toBe(valueOf(text, unit));
      }),
    );
  });

  test('holds for all of several', () => {
    expect(splitList(inUnit('2, 4 1/2', 'cm', true))).toEqual(['2 cm', '4 1/2 cm']);
    expect(splitSize(inUnit('60 x 80', 'cm', true))).toEqual(['60 cm', '80 cm']);
    expect(splitSize(inUnit('60 by 80', 'cm', true))).toEqual(['60 cm', '80 cm']);
  });
});
