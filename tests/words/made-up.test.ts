import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import type { CalculatorName } from '../../src/calculators/calculator.js';
import type { Input } from '../../src/ledger/ledger.js';
import * as headless from '../../src/reckon.js';
import { en } from '../../src/words/en/en.js';
import type { Language } from '../../src/words/language.js';
import { learn } from '../../src/words/languages.js';
import { INPUTS } from './inputs.js';

/** Every word is another one; units and numbers are as they were. */
const otherWords = (text: string): string => text.replace(/\p{L}{3,}/gu, 'zq$&');

const madeUpOf = (words: unknown): unknown => {
  if (typeof words === 'string') return otherWords(words);
  if (typeof words === 'function')
    return (...of: unknown[]) => otherWords(String((words as (...of: unknown[]) => unknown)(...of)));
  if (typeof words !== 'object' || !words) return words;
  return Object.fromEntries(Object.entries(words).map(([key, value]) => [key, madeUpOf(value)]));
};

const RECKON: Record<CalculatorName, (input: Input) => object> = {
  backing: headless.reckonBacking,
  batting: headless.reckonBatting,
  binding: headless.reckonBinding,
  borders: headless.reckonBorders,
  cutting: headless.reckonCutting,
  sleeve: headless.reckonSleeve,
  top: headless.reckonTop,
  worksheet: headless.reckonWorksheet,
};
const NAMES = Object.keys(RECKON) as CalculatorName[];
const RUNS: Partial<Record<CalculatorName, number>> = { cutting: 100, top: 100, worksheet: 150 };

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
  beforeAll(() => {
    const language = madeUpOf(en) as Language;
    learn({ ...language, common: { ...language.common, lang: 'qaa' } });
  });

  test.each(NAMES)('has the same numbers in the %s', (name) => {
    const inputs: fc.Arbitrary<Input> = INPUTS[name] ?? fc.constant({});
    fc.assert(
      fc.property(inputs, (input) => {
        const [english, other] = ['en', 'qaa'].map((lang) => RECKON[name]({ ...input, lang }));
        expect(unworded(other)).toEqual(unworded(english));
      }),
      { numRuns: RUNS[name] ?? 300 },
    );
  });

  test('is spoken indeed: no label and no summary is as it was', () => {
    const result = headless.reckonBacking({ width: 58, length: 70, lang: 'qaa' });
    for (const { label } of result.working) expect(label).toContain('zq');
    expect(result).toMatchObject({ summary: expect.stringContaining('zqpanels') as string });
  });
});
