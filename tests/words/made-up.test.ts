import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import type { CalculatorName } from '../../src/calculators/calculator.js';
import type { Input } from '../../src/ledger/ledger.js';
import * as headless from '../../src/reckon.js';
import { learn } from '../../src/words/languages.js';
import { RECKON } from '../reckon/by-name.js';
import { INPUTS } from './inputs.js';
import { MADE_UP, madeUp, ofAnotherLanguage } from './made-up.js';

const NAMES = Object.keys(RECKON) as CalculatorName[];
const RUNS: Partial<Record<CalculatorName, number>> = { block: 100, cutting: 100, top: 100, worksheet: 150 };

/** The keys that hold words. Everything else has to stay the same. */
const WORDED = new Set(
  [
    'label',
    'how',
    'value',
    'text',
    'summary',
    'notes',
    'message',
    'piece',
    'part',
    'title',
    'reckoned',
  ].concat('name', 'priceText', 'parts'),
);
const unworded = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(unworded);
  if (typeof value !== 'object' || !value) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, part]) => [
      key,
      WORDED.has(key) && typeof part === 'string' ? '' : WORDED.has(key) ? [] : unworded(part),
    ]),
  );
};

describe('a made-up language, in which every word is another', () => {
  beforeAll(() => learn(madeUp));

  test.each(NAMES)('has the same numbers in the %s', (name) => {
    const inputs: fc.Arbitrary<Input> = INPUTS[name] ?? fc.constant({});
    fc.assert(
      fc.property(inputs, (input) => {
        const [english, other] = ['en', MADE_UP].map((lang) => RECKON[name]({ ...input, lang }));
        expect(unworded(other)).toEqual(unworded(english));
      }),
      { numRuns: RUNS[name] ?? 300 },
    );
  });

  test('is spoken indeed: no label, no working and no summary is as it was', () => {
    const { working, ...result } = headless.reckonBacking({ width: 58, length: 70, lang: MADE_UP });
    const summary = 'summary' in result ? result.summary : '';
    for (const text of [summary, ...working.flatMap(({ label, how }) => [label, how])])
      expect(ofAnotherLanguage(text)).toEqual([]);
    expect(summary).toMatch(/ž/);
  });
});
