import { createRequire } from 'node:module';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exact } from '../../src/measure/exact.js';

/** All of fraction.js: the sources are tested with as much of it as the built scripts carry. */
const Fraction = createRequire(import.meta.url)('fraction.js') as typeof import('fraction.js').default;

const digits = fc.stringMatching(/^\d{1,20}$/);
const fraction = fc.tuple(digits, fc.stringMatching(/^[1-9]\d{0,8}$/)).map((parts) => parts.join('/'));
const written = fc.oneof(
  digits,
  fc.tuple(digits, digits).map((parts) => parts.join('.')),
  digits.map((places) => `.${places}`),
  fraction,
  fc.tuple(digits, fraction).map((parts) => parts.join(' ')),
);

describe('an exact number written as text', () => {
  test('is what fraction.js reads there', () => {
    fc.assert(
      fc.property(fc.constantFrom('', '-'), written, (sign, text) => {
        expect(exact(sign + text).toFraction(true)).toBe(new Fraction(sign + text).toFraction(true));
      }),
      { numRuns: 500 },
    );
  });

  test('is read back from the way it is written', () => {
    fc.assert(
      fc.property(fc.bigInt(-(10n ** 20n), 10n ** 20n), fc.bigInt(1n, 10n ** 6n), (top, bottom) => {
        const value = exact(top, bottom);
        expect(exact(value.toFraction(true)).equals(value)).toBe(true);
        expect(exact(value.toFraction()).equals(value)).toBe(true);
      }),
    );
  });

  test('that is no number throws', () => {
    for (const text of ['abc', '1/0', '1/', '1e3', '1,5'])
      expect(() => exact(text).toFraction(), text).toThrow();
  });
});
