import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sentence } from '../sentences.js';
import { parseLength, type Reading } from '../../src/measure/parse.js';

const READINGS: Reading[] = [{}, { units: 'cm' }, { comma: true }, { units: 'cm', comma: true }];

const problem = (text: string, reading?: Reading): string => {
  const parsed = parseLength(text, reading);
  return parsed.ok ? `read as ${parsed.value.toFraction(true)}` : sentence(parsed.problem);
};

/** What a message says would work, one by one. */
const examplesIn = (message: string): string[] =>
  /^[\p{Lu}“].*[.] Write it like (.+)\.$/su.exec(message)?.[1]?.split(/, | or /) ?? [];

const expectHelp = (message: string, reading: Reading): void => {
  const examples = examplesIn(message);
  expect(examples, message).not.toEqual([]);
  for (const example of examples) expect(parseLength(example, reading), example).toMatchObject({ ok: true });
};

const PLAIN = /^(“.*”|This) is not a length\. Write it like 52 1\/2, 52 in or 132 cm\.$/su;

describe('a problem is a sentence that teaches', () => {
  test.each([
    ['1/0', 'Nothing can be divided by 0.'],
    ['1 / 0', 'Nothing can be divided by 0.'],
    ['5 / (2 - 2)', 'Nothing can be divided by 0.'],
    ['0/0', 'Nothing can be divided by 0.'],
    ['3 * 1/000', 'Nothing can be divided by 0.'],
    ['52 3/2', '“52 3/2” can be read two ways.'],
    ['52-2/2', '“52-2/2” can be read two ways.'],
    ['1,5', 'A comma does not mark decimals here.'],
    ['3 in * 4 in', 'Only plain numbers multiply or divide a length.'],
    ['60 / 4 in', 'Only plain numbers multiply or divide a length.'],
    ['3 in * 4 in + 1', 'Only plain numbers multiply or divide a length.'],
    ['60 in x 80 in', 'Only plain numbers multiply or divide a length.'],
    ['12 4', 'Two numbers stand side by side.'],
    ['52 1 2', 'Two numbers stand side by side.'],
    ['1 yd 16', 'Two numbers stand side by side.'],
    ['1 m 32', 'Two numbers stand side by side.'],
    ['4 in 4 ft', 'Two numbers stand side by side.'],
    ['4 in 4 in', 'Two numbers stand side by side.'],
    ['1.2.3', 'Two numbers stand side by side.'],
    ['½½', 'Two numbers stand side by side.'],
    ['5½²', 'Two numbers stand side by side.'],
    ['5²', 'Two numbers stand side by side.'],
    ['1 2/3 4', 'Two numbers stand side by side.'],
    ['2 (3)', PLAIN],
    ['(2 in + 4) in', 'A unit goes right after its number.'],
    ['½8', 'Two numbers stand side by side.'],
    ['5½8', 'Two numbers stand side by side.'],
    ['in 52', 'A unit goes right after its number.'],
    ['52 in in', 'A unit goes right after its number.'],
    ['$ 5', PLAIN],
    ['2 * (12 + 4', 'Every bracket has to close again.'],
    ['2 * (12 abc)', 'Every bracket has to close again.'],
    ['(((2)', 'Every bracket has to close again.'],
    ['2)', PLAIN],
    ['()', PLAIN],
    ['', PLAIN],
    ['   ', PLAIN],
    ['abc', PLAIN],
    ['3 *', PLAIN],
    ['* 3', PLAIN],
    ['5 arm', PLAIN],
    ['5 min', PLAIN],
    ['5 inx', PLAIN],
    ['1e999', PLAIN],
    ['1e3', PLAIN],
    ['0x10', '= read as 0'],
    ['NaN', PLAIN],
    ['Infinity', PLAIN],
    ['undefined', PLAIN],
    ['<img onerror>', PLAIN],
    ['٥٢', PLAIN],
    ['52🧵', PLAIN],
    ['3 % 2', PLAIN],
    ['2 ^ 3', PLAIN],
    ['≈52', PLAIN],
    ['--', PLAIN],
    ['.', PLAIN],
    ['1_000', PLAIN],
  ])('%s', (text, sentence) => {
    const message = problem(text);
    if (typeof sentence !== 'string') expect(message).toMatch(sentence);
    else if (sentence.startsWith('= ')) expect(message).toBe(sentence.slice(2));
    else {
      expect(message.startsWith(`${sentence} Write it like `), message).toBe(true);
    }
    if (!parseLength(text).ok) expectHelp(message, {});
  });

  test('quotes no more than the beginning, and whole characters', () => {
    expect(problem(`${'z'.repeat(24)}`)).toContain(`“${'z'.repeat(24)}”`);
    expect(problem(`${'z'.repeat(25)}`)).toContain(`“${'z'.repeat(24)}…”`);
    expect(problem('🧵'.repeat(30))).toContain(`“${'🧵'.repeat(24)}…”`);
  });
});

describe('limits', () => {
  test.each([
    ['10,000 digits', '9'.repeat(10_000), /too long/],
    ['10,000 brackets', '('.repeat(10_000), /too long/],
    ['a million signs', '-'.repeat(1_000_000), /too long/],
    ['101 signs', `1${' '.repeat(99)}2`, /too long/],
    ['100 digits', '9'.repeat(100), /too large/],
    ['a trillion', '1000000000000', /too large/],
    ['a product', '999999 * 999999 * 999999', /too large/],
    ['a quotient', '999999 / 0.0000001', /too large/],
    ['a huge denominator', `1/${'9'.repeat(98)}`, /too fine/],
    ['many decimals', `0.${'7'.repeat(98)}`, /too fine/],
    ['denominators with nothing in common', '1/99991 + 1/99989 + 1/99971', /too fine/],
  ])('%s', (_, text, words) => {
    expect(problem(text)).toMatch(words);
    expectHelp(problem(text), {});
  });

  test('allow what anybody could mean', () => {
    expect(problem(`1${' '.repeat(97)}+2`)).toBe('read as 3');
    expect(problem('1000000000')).toBe('read as 1000000000');
    // The largest below a trillion, our own limit.
    expect(problem('999999999999')).toBe('read as 999999999999');
    expect(problem('1/1000000')).toBe('read as 1/1000000');
    expect(problem('150.123456 cm')).toMatch(/^read as 59 /);
    expect(problem('('.repeat(49) + '2' + ')'.repeat(49))).toBe('read as 2');
  });

  test('a text that grows when its signs are made plain does not get past them', () => {
    // U+FDFA, one sign that stands for eighteen letters; U+2473, one for two digits.
    expect(problem('\ufdfa'.repeat(100))).toMatch(PLAIN);
    expect(problem('\u2473'.repeat(100))).toMatch(/too large/);
  });
});

describe('any text at all', () => {
  const grammar = fc
    .array(
      fc.oneof(
        { weight: 4, arbitrary: fc.constantFrom(...'0123456789 ./,-+*()=xX×÷−') },
        {
          weight: 2,
          arbitrary: fc.constantFrom('1/2', '52', '4', ' ', '½', '¼', '⁄', '¹', '₂', '0', '-1/2'),
        },
        {
          weight: 1,
          arbitrary: fc.constantFrom(`'`, '"', '’', '″', ' in', ' ft', ' yd', 'cm', 'mm', 'm', 'by'),
        },
      ),
      { maxLength: 40 },
    )
    .map((parts) => parts.join(''));

  const isReadOrExplained = (text: string): void => {
    for (const reading of READINGS) {
      const parsed = parseLength(text, reading);
      if (!parsed.ok) expectHelp(sentence(parsed.problem), reading);
      else expect(parsed.value.n + parsed.value.d <= 1e12).toBe(true);
    }
  };

  test('made of the signs that lengths are made of is read, or refused with help', () => {
    fc.assert(fc.property(grammar, isReadOrExplained), { numRuns: 3000 });
  });
  test('made of anything is read, or refused with help', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 120 }), isReadOrExplained), {
      numRuns: 500,
    });
    fc.assert(fc.property(fc.string({ unit: 'grapheme', maxLength: 120 }), isReadOrExplained), {
      numRuns: 500,
    });
  });
  test('reads the same with anything around it', () => {
    fc.assert(
      fc.property(grammar, (text) => {
        fc.pre(text.length < 90 && !/^\s*=/.test(text));
        const parsed = parseLength(text);
        const around = parseLength(` = ${text} `);
        expect(around.ok).toBe(parsed.ok);
        if (parsed.ok && around.ok) expect(around.value.equals(parsed.value)).toBe(true);
      }),
    );
  });
});
