import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exact } from '../../src/measure/exact.js';
import { bordersFields } from '../../src/calculators/borders/shape.js';
import { reckonBorders, type BordersResult } from '../../src/reckon.js';
import { inputs } from './borders-inputs.js';
import { answersOf } from './asked.js';
import { HOSTILE, inputsOf } from './hostile.js';

const reckon = answersOf(reckonBorders);

describe('the same thing said in other words', () => {
  /** All that does not repeat how it was written. */
  const essence = ({ borders, finished, fabric, buy, cuts }: BordersResult) => ({
    borders,
    finished,
    fabric,
    buy,
    cuts: cuts.map(({ count, piece, width, length }) => [count, piece, width, length]),
  });

  test('inches and centimetres of the same length', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        // What is added to a mitred strip for safety is round in each unit.
        fc.pre(!input.corners.includes('mitred'));
        const cm = (text: string): string => exact(text).mul(exact(254, 100)).valueOf().toFixed(4);
        const inInches = reckon({ ...input, mark: '1/8 in' });
        const metric = {
          ...input,
          width: cm(input.width),
          length: cm(input.length),
          fabricWidth: cm(input.fabricWidth),
          seam: cm(input.seam),
          borders: input.borders.split(', ').map(cm).join(', '),
          mark: '1/8 in',
          units: 'cm',
        };
        const inCm = reckon(metric);
        expect(essence(inCm)).toEqual(essence(inInches));
      }),
    );
  });

  test('one corner style for all, and the same for each', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const many = input.borders.split(', ').length;
        const one = reckon(input);
        const each = reckon({ ...input, corners: Array(many).fill(input.corners).join(', ') });
        expect(essence(each)).toEqual(essence(one));
        const reckoned = ({ working }: BordersResult) => working.filter(({ role }) => role !== 'given');
        expect(reckoned(each)).toEqual(reckoned(one));
      }),
    );
  });

  test('typing over a row what was reckoned there changes nothing', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const result = reckon(input);
        const measured = Object.fromEntries(
          result.working.flatMap(({ id, role, inches }) =>
            role === 'measurable' ? [[id, `${inches} in`]] : [],
          ),
        );
        expect(Object.keys(measured).length).toBeGreaterThan(0);
        expect(essence(reckon({ ...input, measured }))).toEqual(essence(result));
      }),
    );
  });

  test('the answer is plain data', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const result = reckon(input);
        expect(JSON.parse(JSON.stringify(result))).toEqual(result);
      }),
    );
  });
});

describe('whatever is written', () => {
  const keys = inputsOf(bordersFields);
  const nasty = fc.oneof(
    fc.constantFrom<unknown>(
      ...HOSTILE,
      ...[
        '41',
        '1000 in',
        '1/64',
        '0.000001',
        '100 %',
        '50',
        '60 x',
        'x',
        '1 x 1',
        '58 x 70',
        '1000 x 1000',
        'constructor',
        '__proto__',
      ],
      ...[
        ',',
        '2,,3',
        '2, abc',
        '1,1,1,1,1,1,1,1,1,1,1,1',
        '1,1,1,1,1,1,1,1,1,1,1,1,1',
        'squares, mitred',
        'mitred',
        'squares,',
        '1/8 yd',
      ],
      ...[
        '3 mi',
        1e-7,
        [1, 'x'],
        [null],
        { border1Sides: '1/2' },
        { border1Sides: 'abc', border1TopLength: '-1' },
        { washedWidth: '1/1000' },
      ],
    ),
    fc.string(),
    fc.double(),
    fc.anything(),
  );
  const good = { width: 58, length: 70, borders: '2, 4 1/2', corners: 'sides-first', shrinkage: 3 };
  const sound = (input: Record<string, unknown>): void => {
    const result = reckonBorders(input);
    if (!result.errors) {
      const { working, cost: _, ...own } = result;
      // What was typed is shown back as it was, whatever it was; and any three letters may be a currency.
      const reckoned = working.filter(({ id, role }) => role !== 'given' && id !== 'cost');
      expect(JSON.stringify([own, reckoned])).not.toMatch(/NaN|Infinity|undefined|null/);
      expect(exact(result.buy.inches).gte(exact(result.fabric))).toBe(true);
      return;
    }
    expect(result.buy).toBeUndefined();
    expect(result.errors.length).toBeGreaterThan(0);
    for (const { input, message } of result.errors) {
      expect(input).not.toBe('');
      expect(message).toMatch(/^[A-Z“0-9].*[.?]$/s);
    }
  };

  test.each(keys)('%s', (key) => {
    fc.assert(
      fc.property(nasty, fc.constantFrom('across', 'along'), (value, grain) =>
        sound({ ...good, grain, [key]: value }),
      ),
      { numRuns: 300 },
    );
  });

  test('everything at once', () => {
    fc.assert(
      fc.property(fc.dictionary(fc.constantFrom(...keys), nasty), fc.boolean(), (input, onGood) =>
        sound({ ...(onGood && good), ...input }),
      ),
      { numRuns: 1000 },
    );
  });
});
