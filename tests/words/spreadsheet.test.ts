import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { SheetCell } from '../../src/words/sheet-rows.js';
import { evaluate, evaluated } from './evaluate.js';
import { KINDS, spread, type Given } from './spreadsheets.js';

const UNITS = { in: [1, 8], cm: [2.54, 2] } as const;

/** A length from so many inches to so many, as a reader writes it in these units. */
const within = (units: 'in' | 'cm', least: number, most: number) => {
  const [size, parts] = UNITS[units];
  const ends = { min: Math.ceil(least * size * parts), max: Math.floor(most * size * parts) };
  return fc.integer(ends).map((count) => `${count / parts}`);
};
const maybe = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined });

type Inputs = (
  length: (least: number, most: number) => fc.Arbitrary<string>,
) => Record<string, fc.Arbitrary<unknown>>;

const shop: Inputs = (length) => ({
  fabricWidth: length(36, 60),
  shrinkage: maybe(fc.constantFrom('3', '5', '2 1/2')),
  increment: fc.constantFrom('1/8 yd', '1/4 yd', 'thirds', '10 cm', '1 m', '3 in', '0.5 m'),
  price: maybe(fc.integer({ min: 1, max: 5000 }).map((cents) => `${cents / 100}`)),
  currency: maybe(fc.constantFrom('EUR', 'JPY')),
});
const quilt: Inputs = (length) => ({ width: length(30, 110), length: length(30, 110) });
const flag = fc.constantFrom('yes', 'no');

/** What a reader may give each of them, at random. */
const INPUTS: Record<string, Inputs> = {
  backing: (length) => ({
    ...quilt(length),
    ...shop(length),
    overage: length(0.5, 6),
    seam: length(0.25, 1),
    repeat: maybe(length(4, 24)),
    oneWay: flag,
    piecedStrip: flag,
  }),
  binding: (length) => ({
    ...quilt(length),
    ...shop(length),
    allowance: length(4, 12),
    finished: maybe(length(0.25, 0.75)),
    stripWidth: maybe(length(1.5, 3)),
    fold: fc.constantFrom('double', 'single'),
    cut: fc.constantFrom('straight', 'bias'),
    join: fc.constantFrom('diagonal', 'straight'),
    measured: maybe(fc.record({ around: length(200, 300) })),
  }),
  borders: (length) => ({
    ...quilt(length),
    ...shop(length),
    borders: fc.array(length(1, 8), { minLength: 1, maxLength: 3 }).map((all) => all.join(', ')),
    target: maybe(fc.tuple(length(140, 170), length(140, 170)).map((sides) => sides.join(' x '))),
    corners: fc.constantFrom('sides-first', 'ends-first', 'squares', 'mitred'),
    grain: fc.constantFrom('across', 'along'),
    join: fc.constantFrom('diagonal', 'straight'),
  }),
  batting: (length) => ({
    ...quilt(length),
    ...shop(length),
    overage: length(0.5, 6),
    roll: maybe(fc.array(length(40, 120), { minLength: 1, maxLength: 3 }).map((all) => all.join(', '))),
    bed: fc.constantFrom('none', 'twin', 'queen'),
    drop: length(6, 20),
    tuck: length(0.5, 12),
  }),
  top: (length) => ({
    ...shop(length),
    block: length(4, 16),
    across: fc.integer({ min: 2, max: 6 }),
    down: fc.integer({ min: 2, max: 6 }),
    sashing: maybe(length(1, 3)),
    cornerstones: flag,
    frame: flag,
    set: fc.constantFrom('straight', 'on-point'),
  }),
  cutting: (length) => ({
    ...shop(length),
    list: fc
      .array(
        fc.tuple(fc.constantFrom('A', 'B'), length(2, 9), length(2, 9), fc.integer({ min: 1, max: 20 })),
        {
          minLength: 1,
          maxLength: 4,
        },
      )
      .map((rows) =>
        rows
          .map(([fabric, width, height, count]) => `${fabric} | piece | ${width} x ${height} | ${count}`)
          .join('\n'),
      ),
    sheet: maybe(fc.constantFrom('fat-quarter', '18 x 22 in')),
  }),
  worksheet: () => ({
    increment: fc.constantFrom('1/8 yd', 'thirds', '10 cm'),
    fabrics: fc.constant([{ letter: 'A', price: '12.50' }, { letter: 'B' }]),
    parts: fc.array(
      fc.record({
        title: fc.constantFrom('Binding', 'Borders'),
        fabric: fc.constantFrom('A', 'B', ''),
        need: fc.integer({ min: 1, max: 800 }).map((eighths) => `${eighths}/8`),
        width: fc.constantFrom('40', '42'),
      }),
      { minLength: 1, maxLength: 5 },
    ),
    kits: maybe(fc.integer({ min: 2, max: 30 })),
  }),
};

const given = (name: string): fc.Arbitrary<Given> =>
  fc.constantFrom('in', 'cm').chain((units) => {
    const inputs = INPUTS[name]?.((least, most) => within(units, least, most)) ?? {};
    return fc.record({ units: fc.constant(units), ...inputs });
  });

const inColumns = (cells: SheetCell[][]): Map<string, SheetCell> =>
  new Map(
    cells.flatMap((row, down) => row.map((cell, across) => [`${'ABCDEFGHIJ'[across]}${down + 1}`, cell])),
  );

/** Roots are not exact: they are never short, by less than this. */
const FINE = 5e-6;

describe('a spreadsheet of the working', () => {
  test.each(Object.keys(KINDS))(
    'of %s reckons, from what was given alone, what is reckoned here',
    (name) => {
      let formulas = 0;
      fc.assert(
        fc.property(given(name), (input) => {
          const { reckoning, cells } = spread(name, input);
          fc.pre(!reckoning.issues.length);
          const values = evaluated(cells);
          for (const [address, cell] of inColumns(cells)) {
            if (typeof cell !== 'object' || !cell.formula) continue;
            formulas++;
            const { value, formula } = cell;
            const about = `${address}: =${formula}`;
            if (typeof value === 'number')
              expect(Math.abs(Number(values.get(address)) - value), about).toBeLessThan(
                FINE * Math.max(1, value),
              );
            else expect(values.get(address), about).toBe(value);
          }
        }),
        { numRuns: 150 },
      );
      expect(formulas).toBeGreaterThan(100);
    },
    60_000,
  );

  test.each(Object.keys(KINDS))(
    'of %s has numbers as numbers, in its columns, and no cell without words',
    (name) => {
      fc.assert(
        fc.property(given(name), (input) => {
          const { reckoning, cells } = spread(name, input);
          fc.pre(!reckoning.issues.length);
          const end = cells.findIndex((row) => !row.length);
          expect(end).toBe(cells.slice(1).findIndex((row) => !row.length) + 1);
          for (const [label, value, unit] of cells.slice(1, end)) {
            expect(label).toMatch(/\p{L}/u);
            expect(value).toBeTruthy();
            expect(unit ?? '').toBeTypeOf('string');
          }
          expect(JSON.stringify(cells)).not.toMatch(/NaN|Infinity|undefined|\[object|null/);
        }),
        { numRuns: 50 },
      );
    },
    60_000,
  );

  test('what is bought follows the cloth and the step, in the shop’s unit', () => {
    const { cells } = spread('backing', { width: '58', length: '70', price: '12.50 EUR' });
    const row = (label: string): SheetCell[] => cells.find(([first]) => first === label) ?? [];
    expect(row('Backing width').slice(0, 3)).toEqual([
      'Backing width',
      { value: 66, formula: 'B2+2*B4' },
      'in',
    ]);
    expect(row('Buy')[1]).toMatchObject({ value: 3.75, formula: 'CEILING(ROUND(B18/B13,9),1)*B13/36' });
    expect(row('Buy')[2]).toBe('yd');
    expect(row('Cost').slice(1, 3)).toMatchObject([{ value: 46.88, format: '0.00' }, 'EUR']);
  });

  test('a count that was found says so where what was changed makes it too little', () => {
    const { cells } = spread('backing', { width: '58', length: '70' });
    const longer = cells.map((row) =>
      row[0] === 'Quilt length' ? [row[0], { value: 90 }, ...row.slice(2)] : row,
    );
    const panels = cells.findIndex(([label]) => label === 'Panels side by side') + 1;
    expect(evaluated(cells).get(`D${panels}`)).toMatch(/79 ≥ 78/);
    expect(evaluated(longer).get(`D${panels}`)).toMatch(/not enough/i);
  });

  test('a number that no formula goes by says so', () => {
    const { cells } = spread('backing', { width: '58', length: '70' });
    const noted = cells.filter(([, , , how]) => typeof how === 'string' && how.includes('no formula'));
    expect(noted.map(([label]) => label)).toEqual(['Pattern repeat', 'Shrinkage']);
  });

  test('words of a reader are words, with quote marks and of any length', () => {
    const title = `12" "long" ${'x'.repeat(400)}`;
    const { cells } = spread('worksheet', { parts: [{ title, fabric: 'A', need: '20' }] });
    evaluated(cells);
    expect(JSON.stringify(cells)).toContain('xxx');
  });
});

describe('the evaluator', () => {
  test.each([
    ['1+2*3', 7],
    ['(1+2)*3-4/2', 7],
    ['CEILING(ROUND(10/3,9),1)', 4],
    ['INT(7.5)+MIN(3,2,4)', 9],
    ['"a ""b"""&1', 'a "b"1'],
    ['IF(ROUND(B1-2,6)>=0,"yes","no")', 'yes'],
    ['-B1+5', 3],
  ])('%s is %s', (formula, value) => {
    expect(evaluate(formula, () => 2)).toBe(value);
  });

  test.each(['1+', '(1', 'NOPE(1)', '1 2', '1/0', '=1'])('%s is refused', (formula) => {
    expect(() => {
      const value = evaluate(formula, () => 2);
      if (!Number.isFinite(value)) throw new Error('no number');
    }).toThrow();
  });
});
