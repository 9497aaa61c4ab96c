import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sentence } from '../sentences.js';
import { exact, type Exact } from '../../src/measure/exact.js';
import { parseLength, type Reading } from '../../src/measure/parse.js';

/** What the text reads as, in exact inches as a fraction; the message where it is refused. */
const read = (text: string, reading?: Reading): string => {
  const parsed = parseLength(text, reading);
  return parsed.ok ? parsed.value.toFraction(true) : sentence(parsed.problem);
};

const METRIC: Reading = { units: 'cm' };
const COMMA: Reading = { comma: true };

describe('every written form', () => {
  // 52 1/2 in is 105 halves; a foot is 12 in and a yard 36 in.
  test.each([
    ['52', '52'],
    ['52.5', '52 1/2'],
    ['52 1/2', '52 1/2'],
    ['52-1/2', '52 1/2'],
    ['52½', '52 1/2'],
    ['52 ½', '52 1/2'],
    ['52-½', '52 1/2'],
    ['52 1/2"', '52 1/2'],
    ['52 1/2 in', '52 1/2'],
    [`4' 4"`, '52'],
    [`4'4"`, '52'],
    [`4'-6"`, '54'],
    [`4' 6 1/2"`, '54 1/2'],
    [`4'-6½"`, '54 1/2'],
    [`4' 6`, '54'],
    ['4 ft 6', '54'],
    ['4 ft 6 in', '54'],
    ['4ft6in', '54'],
    ['4ft-6in', '54'],
    ['4 ft. 6 in.', '54'],
    ['1 yd 16 in', '52'],
    ['1 yd 1 ft 4 in', '52'],
    ['1 1/4 yd', '45'],
    ['3/4', '3/4'],
    ['105/2', '52 1/2'],
    ['.5', '1/2'],
    ['0.125', '1/8'],
    ['5.', '5'],
    ['52 1/2.', '52 1/2'],
    ['007', '7'],
    ['-5', '-5'],
    ['-½', '-1/2'],
    ['-2 1/2', '-2 1/2'],
    ['+5', '5'],
    ['  52\t1/2  ', '52 1/2'],
  ])('%s is %s in', (text, inches) => expect(read(text)).toBe(inches));

  test.each([
    // 1 in = 2.54 cm exactly (NIST SP 811, appendix B, from memory), so 1 cm = 50/127 in: 132 × 50/127 = 6600/127.
    ['132 cm', exact(6600, 127)],
    ['132cm', exact(6600, 127)],
    ['1.32 m', exact(6600, 127)],
    ['1320 mm', exact(6600, 127)],
    ['1 m 32 cm', exact(6600, 127)],
    ['2.54 cm', exact(1)],
    ['25.4 mm', exact(1)],
    ['0.9144 m', exact(36)],
  ])('%s is exact in inches', (text, inches) =>
    expect(parseLength(text)).toEqual({ ok: true, value: inches }),
  );

  test.each(Object.entries({ '⅛': [1, 8], '¼': [1, 4], '⅓': [1, 3], '⅜': [3, 8], '½': [1, 2] }))(
    '%s alone and behind a number',
    (sign, [top, bottom]) => {
      expect(read(sign)).toBe(`${top}/${bottom}`);
      expect(read(`12${sign}`)).toBe(`12 ${top}/${bottom}`);
      expect(read(`12 ${sign}"`)).toBe(`12 ${top}/${bottom}`);
    },
  );
  test.each(Object.entries({ '⅝': [5, 8], '⅔': [2, 3], '¾': [3, 4], '⅞': [7, 8], '⅙': [1, 6], '⅕': [1, 5] }))(
    '%s alone and behind a number',
    (sign, [top, bottom]) => {
      expect(read(sign)).toBe(`${top}/${bottom}`);
      expect(read(`12${sign}`)).toBe(`12 ${top}/${bottom}`);
      expect(read(`12-${sign}`)).toBe(`12 ${top}/${bottom}`);
    },
  );

  test.each([
    ['5⁄16', '5/16'],
    ['59 5⁄16', '59 5/16'],
    ['59⁵⁄₁₆', '59 5/16'],
    ['¹¹⁄₁₆', '11/16'],
  ])('the composed fraction %s', (text, inches) => expect(read(text)).toBe(inches));

  test.each([`4' 4"`, '4’ 4”', '4′ 4″', '4‘ 4“', `4' 4''`, '4’ 4’’', '4′ 4′′', '４＇ ４＂'])(
    'foot and inch marks as in %s',
    (text) => expect(read(text)).toBe('52'),
  );

  test.each([
    ['in', '1'],
    ['ins', '1'],
    ['inch', '1'],
    ['Inches', '1'],
    ['IN.', '1'],
    ['ft', '12'],
    ['foot', '12'],
    ['feet', '12'],
    ['yd', '36'],
    ['yds', '36'],
    ['yard', '36'],
    ['yards', '36'],
    ['mm', '5/127'],
    ['millimeter', '5/127'],
    ['millimetres', '5/127'],
    ['cm', '50/127'],
    ['centimetre', '50/127'],
    ['centimeters', '50/127'],
    ['m', '39 47/127'],
    ['metre', '39 47/127'],
    ['Meters', '39 47/127'],
  ])('the unit word %s', (word, inches) => {
    expect(read(`1 ${word}`)).toBe(inches);
    expect(read(`1${word}`)).toBe(inches);
  });

  test.each([
    ['a no-break space', '52\u00a01/2'],
    ['a narrow no-break space', '52\u202f1/2'],
    ['a direction mark from a right-to-left page', '\u200e52 1/2\u200f'],
    ['a soft hyphen', '52\u00ad1/2'],
    ['full-width digits', '５２ １／２'],
    ['an en dash', '52–1/2'],
    ['a no-break hyphen', '52‑1/2'],
  ])('with %s', (_, text) => expect(read(text)).toBe('52 1/2'));
});

describe('a bare number', () => {
  test('is in the units of the page', () => {
    expect(read('127')).toBe('127');
    expect(read('127', METRIC)).toBe('50');
    expect(read('63 1/2', METRIC)).toBe('25');
    expect(read('127 in', METRIC)).toBe('127');
  });
  test('joins lengths in the units of the page, and multiplies as a plain number', () => {
    expect(read('2 in + 127', METRIC)).toBe('52');
    expect(read('2 * 127', METRIC)).toBe('100');
    expect(read('(1 + 1) * 127', METRIC)).toBe('100');
    expect(read('2 * 4 in', METRIC)).toBe('8');
    expect(read('127 / 2 - 1 in', METRIC)).toBe('24');
  });
});

describe('a decimal comma', () => {
  test.each([
    ['52,5', '52 1/2'],
    [',5', '1/2'],
    ['52.5', '52 1/2'],
    ['2,54 cm', '1'],
    ['2 * 1,25 + 0,5', '3'],
  ])('reads %s where the language writes so', (text, inches) => expect(read(text, COMMA)).toBe(inches));
  test('is refused elsewhere', () => {
    expect(read('52,5')).toBe('A comma does not mark decimals here. Write it like 52.5 or 52 1/2.');
    expect(read('1,000')).toMatch(/^A comma/);
  });
  test('marks no thousands anywhere', () => {
    expect(read('1,000', COMMA)).toBe('1');
    expect(read('1,000,000', COMMA)).toMatch(/side by side/);
    expect(read('1.000')).toBe('1');
  });
});

describe('the rule for signs that could mean two things', () => {
  test.each([
    ['52-1/2', '52 1/2'],
    ['52 - 1/2', '51 1/2'],
    ['52 -1/2', '51 1/2'],
    ['52- 1/2', '51 1/2'],
    ['52 − 1/2', '51 1/2'],
    ['5 - 1/2', '4 1/2'],
    ['8-3', '5'],
    ['8-3 1/2', '4 1/2'],
    ['8.5-1/2', '8'],
    ['3/4-1/8', '5/8'],
    ['2-1/2-1/4', '2 1/4'],
    [`4'-6"`, '54'],
    [`4' - 6"`, '42'],
    [`4' -6"`, '42'],
    [`4'- 6"`, '42'],
    ['10ft-6ft', '48'],
    ['1yd-16in', '20'],
    [`4'-1/2"`, '48 1/2'],
  ])('a hyphen: %s is %s', (text, inches) => expect(read(text)).toBe(inches));

  test.each([
    ['12 1/2', '12 1/2'],
    ['12 1/2 / 2', '6 1/4'],
    ['12 1 / 2', '12 1/2'],
    ['3 / 1/2', '6'],
    ['3/½', '6'],
    ['½/½', '1'],
    ['3 / 1 / 2', '1 1/2'],
    ['1/2/4', '1/8'],
    ['60/2.5', '24'],
    ['2.5/2', '1 1/4'],
    ['6 ÷ 3/4', '8'],
    ['6÷3', '2'],
  ])('a slash: %s is %s', (text, inches) => expect(read(text)).toBe(inches));
});

describe('arithmetic', () => {
  test.each([
    ['3 * 12 1/2 + 4', '41 1/2'],
    ['= 3 * 12 1/2 + 4', '41 1/2'],
    ['=4+3*12½', '41 1/2'],
    ['3 × 12 1/2', '37 1/2'],
    ['3 x 12 1/2 in', '37 1/2'],
    ['2x4', '8'],
    ['2 x 4 in', '8'],
    [`4"x3`, '12'],
    ['4in x 3', '12'],
    ['(3 + 1) * (12 + 1/2)', '50'],
    // 127 cm are 50 in
    ['(100 + 27) cm', '50'],
    ['(2 * 63.5) cm + 2 in', '52'],
    ['((2))', '2'],
    ['-(2 + 3)', '-5'],
    ['2 * -3', '-6'],
    ['8 - -3', '11'],
    ['--5', '5'],
    ['10 - 4 - 3', '3'],
    ['100 / 5 / 2', '10'],
    ['2 - 2 * 3', '-4'],
    ['2 * 3 - 2', '4'],
    ['60 in / 4', '15'],
    ['60 in / 4 in', '15'],
    ['3 in * 4 in / 2 in', '6'],
    ['1/3 + 1/3 + 1/3', '1'],
    ['1 yd - 4 in', '32'],
    ['1 yd + 2.54 cm', '37'],
  ])('%s is %s', (text, inches) => expect(read(text)).toBe(inches));

  interface Sum {
    text: string;
    value: Exact;
    /** Whether a sign of lower rank stands outside brackets, so that a factor needs them. */
    loose: boolean;
  }
  const bracketed = ({ text, loose }: Sum): string => (loose ? `(${text})` : text);

  /** Sums over plain numbers, each with its value reckoned on the way up, away from the parser. */
  const { sums } = fc.letrec<{ sums: Sum }>((tie) => ({
    sums: fc.oneof(
      { depthSize: 'small', withCrossShrink: true },
      fc.tuple(fc.nat(60), fc.integer({ min: 1, max: 16 }), fc.nat(15)).map(([whole, bottom, top]): Sum => {
        const part = top % bottom;
        const text = part ? (whole ? `${whole} ${part}/${bottom}` : `${part}/${bottom}`) : String(whole);
        return { text, value: exact(whole * bottom + part, bottom), loose: false };
      }),
      fc
        .tuple(tie('sums'), fc.constantFrom('+', '-', '*', '/'), tie('sums'), fc.constantFrom(' ', '  '))
        .map(([a, sign, b, gap]): Sum => {
          if (sign === '*' || (sign === '/' && b.value.n))
            return {
              text: `${bracketed(a)}${gap}${sign}${gap}(${b.text})`,
              value: sign === '*' ? a.value.mul(b.value) : a.value.div(b.value),
              loose: false,
            };
          return sign === '-'
            ? { text: `${a.text} - ${bracketed(b)}`, value: a.value.sub(b.value), loose: true }
            : { text: `${a.text} +${gap}${b.text}`, value: a.value.add(b.value), loose: true };
        }),
    ),
  }));

  test('reads any sum that a person could write as its value', () => {
    fc.assert(
      fc.property(sums, ({ text, value }) => {
        fc.pre(text.length <= 90 && value.n + value.d <= 1e9);
        expect(read(text)).toBe(value.toFraction(true));
        expect(read(text, METRIC)).toBe(value.mul(50).div(127).toFraction(true));
        expect(read(`(${text}) * 1 yd`)).toBe(value.mul(36).toFraction(true));
      }),
      { numRuns: 400 },
    );
  });
});
