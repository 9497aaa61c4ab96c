import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sentence } from '../sentences.js';
import { exact, most, ZERO, type Exact } from '../../src/measure/exact.js';
import { asTyped, decimal, length, mixed, number, unbroken, type Style } from '../../src/measure/format.js';
import { parseLength } from '../../src/measure/parse.js';
import { fractions, hundredthsOfMillimetres, sixtyFourths } from './arbitraries.js';

const INCH: Style = { units: 'in' };
const METRIC: Style = { units: 'cm' };
const METRIC_COMMA: Style = { units: 'cm', comma: true };

const valueOf = (text: string, style?: Style): Exact => {
  const parsed = parseLength(text, style);
  if (!parsed.ok) throw new Error(`${text}: ${sentence(parsed.problem)}`);
  return parsed.value;
};
const readsAs = (text: string, value: Exact, style?: Style): void => {
  expect(valueOf(text, style).toFraction(true), text).toBe(value.toFraction(true));
};

describe('mixed numbers', () => {
  test.each([
    [exact(243, 2), '121 1/2'],
    [exact(1, 2), '1/2'],
    [exact(-5, 2), '-2 1/2'],
    [exact(40), '40'],
    [ZERO, '0'],
  ])('%#', (value, text) => expect(mixed(value)).toBe(text));

  test('read back to the same value', () => {
    fc.assert(fc.property(fractions({ min: -1000 }), (value) => readsAs(mixed(value), value)));
  });
});

describe('decimals', () => {
  test.each([
    [exact(10), 0, '10'],
    [exact(1200), 2, '1200'],
    [exact('133.35'), 3, '133.35'],
    [exact('133.35'), 1, '133.4'],
    [exact('0.0001'), 4, '0.0001'],
    [exact(2, 3), 4, '0.6667'],
    [exact(-5, 2), 2, '-2.5'],
    [exact(-1, 100_000), 2, '0'],
    [exact('999999999.9999'), 4, '999999999.9999'],
  ])('%#', (value, places, text) => {
    expect(decimal(value, places)).toBe(text);
    expect(decimal(value, places, true)).toBe(text.replace('.', ','));
  });
  test('are exact where there are places enough', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e9, max: 1e9 }), fc.integer({ min: 0, max: 4 }), (digits, places) => {
        const value = exact(digits).div(10 ** places);
        expect(exact(decimal(value, places)).equals(value)).toBe(true);
      }),
    );
  });
});

describe('lengths', () => {
  test.each<[string, Style, string]>([
    ['105/2', INCH, '52 1/2 in'],
    ['105/2', METRIC, '133.35 cm'],
    ['105/2', METRIC_COMMA, '133,35 cm'],
    ['1/3', INCH, '1/3 in'],
    ['1/12', INCH, '1/12 in'],
    ['1/13', INCH, '≈1/16 in'],
    ['1/64', INCH, '1/64 in'],
    ['1/128', INCH, '≈0 in'],
    // 132 cm = 6600/127 in = 51.9685…: 51 15/16 is 0.0310 below and 52 is 0.0315 above.
    ['6600/127', INCH, '≈51 15/16 in'],
    ['6600/127', METRIC, '132 cm'],
    // A third of an inch is 0.84666… cm.
    ['1/3', METRIC, '≈0.8 cm'],
    ['1/3', METRIC_COMMA, '≈0,8 cm'],
    ['0', INCH, '0 in'],
    ['-1/4', INCH, '-1/4 in'],
  ])('%s in', (inches, style, text) => expect(length(exact(inches), style)).toBe(text));

  test('shown exactly read back to the same value, in inches', () => {
    fc.assert(
      fc.property(fc.oneof(sixtyFourths, fractions({ min: -1000, finest: 12 })), (value) => {
        readsAs(length(value, INCH), value, METRIC);
        readsAs(number(value, INCH), value, INCH);
      }),
    );
  });
  test('shown exactly read back to the same value, in centimetres', () => {
    fc.assert(
      fc.property(hundredthsOfMillimetres, (value) => {
        readsAs(length(value, METRIC), value, INCH);
        readsAs(number(value, METRIC), value, METRIC);
        readsAs(length(value, METRIC_COMMA), value, METRIC_COMMA);
        readsAs(number(value, METRIC_COMMA), value, METRIC_COMMA);
      }),
    );
  });
  test('are shown as near as said: exact, or behind ≈ within half of 1/16 in or 1 mm', () => {
    fc.assert(
      fc.property(fractions({ min: -1000 }), (value) => {
        for (const [style, half] of [
          [INCH, exact(1, 32)],
          [METRIC, exact(5, 254)],
        ] as const) {
          const text = length(value, style);
          const off = valueOf(text.replace('≈', ''), style).sub(value);
          expect(most(off, off.neg()).lte(half), text).toBe(true);
          expect(text.startsWith('≈'), text).toBe(off.n > 0n);
        }
      }),
    );
  });
});

describe('asTyped', () => {
  test.each<[string, Style, string]>([
    ['58', INCH, '58 in'],
    ['58', METRIC, '147.32 cm'],
    // 150 cm = 7500/127 in is no mark of an inch ruler, so the reader's own unit stays.
    ['7500/127', INCH, '150 cm'],
    ['7500/127', METRIC, '150 cm'],
    // A third of an inch is no thousandth of a centimetre.
    ['1/3', METRIC, '1/3 in'],
    ['1/17', INCH, '≈1/16 in'],
  ])('%s in', (inches, style, text) => expect(asTyped(exact(inches), style)).toBe(text));

  test('reads back exactly whatever was written in either system', () => {
    fc.assert(
      fc.property(
        fc.oneof(sixtyFourths, hundredthsOfMillimetres),
        fc.constantFrom(INCH, METRIC, METRIC_COMMA),
        (value, style) => readsAs(asTyped(value, style), value, style),
      ),
    );
  });
});

describe('unbroken', () => {
  test.each([
    ['1 1/8 yd', '1~1/8~yd'],
    ['3 7/8 × 3 7/8 in', '3~7/8~× 3~7/8~in'],
    ['3 1/2 in × 66 in', '3~1/2~in~×~66~in'],
    ['1 full package, 81 × 96 in', '1 full package, 81~×~96~in'],
    ['1 package, 228.6 × 274.32 cm', '1 package, 228.6~× 274.32~cm'],
    ['137,16 × 172 cm', '137,16~× 172~cm'],
    ['137 × 172,72 cm', '137~× 172,72~cm'],
    ['66 in ≥ 60 in', '66~in ≥~60~in'],
    ['40 × (1 − 3 %) = 38 4/5 in', '40~× (1 − 3~%) = 38~4/5~in'],
    ['≈ 2,5 m, 80 cm', '≈ 2,5~m, 80~cm'],
    ['3 cut into 2 × 7 1/2, 2 × 35, 1 × 38 (each', '3 cut into 2~× 7~1/2, 2~×~35, 1~×~38 (each'],
    // A sum breaks at its operators, and words between each other.
    ['3 × 40 − 2 × 1/2 + 6 whole', '3~× 40 − 2~× 1/2 + 6 whole'],
    ['2 inches, 7 fat quarters', '2 inches, 7~fat quarters'],
    ['sashing, border 1, border 2', 'sashing, border~1, border~2'],
    ['Rand 2, 1,5 cm', 'Rand~2, 1,5~cm'],
    ['32 × square, 2 Fat Quarters', '32~× square, 2~Fat Quarters'],
    // As people type a size.
    ['written like 12 x 40, width first', 'written like 12~x~40, width first'],
    ['Mat: 24 in x 36 in', 'Mat: 24~in~x~36~in'],
  ])('%s', (text, kept) => {
    expect(unbroken(text)).toBe(kept.replaceAll('~', '\u00a0'));
    expect(unbroken(text).replace(/\s/g, ' ')).toBe(text);
  });
});
