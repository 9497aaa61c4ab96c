import { describe, expect, test } from 'vitest';
import fc from 'fast-check';
import { decimalsOfCurrency, moneyIn } from '../../src/measure/money.js';

/** Money as the browser writes it. */
const asBrowsers = (lang: string, value: number, currency: string | undefined): string =>
  new Intl.NumberFormat(lang, {
    maximumFractionDigits: 6,
    ...(currency ? { style: 'currency', currency } : { minimumFractionDigits: 2 }),
  }).format(value);

const LANGUAGES = [
  'en',
  'en-US',
  'en-GB',
  'en-IE',
  'en-AU',
  'en-CA',
  'en-NZ',
  'en-IN',
  'de',
  'de-CH',
  'fr',
  'ar',
];
const CURRENCIES = [undefined, 'EUR', 'eur', 'GBP', 'USD', 'CAD', 'AUD', 'JPY', 'KWD', 'CHF'];

describe('money', () => {
  // What `Intl.NumberFormat` of this engine writes.
  test('is written as the browser writes it, in every language and currency', () => {
    const cents = fc.oneof(fc.nat(100_000), fc.nat(2_000_000_000)).map((all) => all / 100);
    // Nobody owes less than nothing: a 0 with a sign is a plain 0 here.
    const any = fc.double({ min: -10, max: 1e12, noNaN: true }).filter((value) => !Object.is(value, -0));
    fc.assert(
      fc.property(
        fc.constantFrom(...LANGUAGES),
        fc.constantFrom(...CURRENCIES),
        fc.oneof(cents, cents, any),
        (lang, currency, value) => {
          expect(moneyIn(lang, value, currency)).toBe(asBrowsers(lang, value, currency));
        },
      ),
      { numRuns: 3000 },
    );
  });

  test.each([
    ['en', 1234.5, 'EUR', '€1,234.50'],
    ['en-GB', 0, 'GBP', '£0.00'],
    ['en-US', 1_000_000, 'USD', '$1,000,000.00'],
    ['en', 12.345, 'USD', '$12.345'],
    ['en', 999.99, undefined, '999.99'],
  ])('%s: %d %s', (lang, value, currency, text) => {
    expect(moneyIn(lang, value, currency)).toBe(text);
  });

  test('needs no known language', () => {
    expect(moneyIn('no such language', 2.5, 'EUR')).toBe('2.50');
  });

  test('has the decimals of its currency', () => {
    expect(['EUR', 'usd', 'GBP', 'JPY', 'KWD'].map(decimalsOfCurrency)).toEqual([2, 2, 2, 0, 3]);
  });
});
