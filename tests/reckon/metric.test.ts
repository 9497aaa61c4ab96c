import { describe, expect, test } from 'vitest';
import {
  reckonBacking,
  reckonBatting,
  reckonBinding,
  reckonBlock,
  reckonBorders,
  reckonCutting,
  reckonSleeve,
  reckonTop,
} from '../../src/reckon.js';

const RECKON = {
  backing: reckonBacking,
  batting: reckonBatting,
  binding: reckonBinding,
  block: reckonBlock,
  borders: reckonBorders,
  cutting: reckonCutting,
  sleeve: reckonSleeve,
  top: reckonTop,
} as const;

/** A result without errors. */
const good = <R extends object>(result: R): Extract<R, { errors?: undefined }> => {
  if ('errors' in result) throw new Error(JSON.stringify(result.errors));
  return result as Extract<R, { errors?: undefined }>;
};
const batting = (input: object) => good(reckonBatting(input));

const valuesOf = (working: { id: string; value: string }[]): Record<string, string> =>
  Object.fromEntries(working.map(({ id, value }) => [id, value]));

// Round centimetres that shops and teachers use: from memory.
const DEFAULTS: [keyof typeof RECKON, object, Record<string, string>][] = [
  [
    'backing',
    { width: 150, length: 200 },
    { overage: '10 cm', fabricWidth: '105 cm', seam: '1.5 cm', increment: '10 cm' },
  ],
  [
    'binding',
    { width: 150, length: 200 },
    { allowance: '25 cm', strip: '6.5 cm', thickness: '0.3 cm', mark: '0.1 cm', seam: '0.75 cm' },
  ],
  [
    'borders',
    { width: 150, length: 200, borders: '10' },
    { seam: '0.75 cm', fabricWidth: '105 cm', border1Width: '11.5 cm' },
  ],
  ['batting', { bed: '140x200' }, { drop: '30 cm', overage: '10 cm' }],
  ['top', { block: 30, across: 4, down: 5 }, { seam: '0.75 cm' }],
  ['cutting', { list: 'A | square | 9 | 12' }, { ruler: '60 cm', mat: '60 cm x 90 cm', seam: '0.75 cm' }],
  [
    'block',
    { chart: 'A B; B A', block: 30 },
    { seam: '0.75 cm', fabricWidth: '105 cm', mark: '0.1 cm', cell: '15 cm', unfinished: '31.5 cm' },
  ],
  ['sleeve', { width: 150 }, { stripWidth: '22 cm', short: '2.5 cm', hem: '1.5 cm', seam: '0.75 cm' }],
];

describe('with units="cm"', () => {
  test.each(DEFAULTS)('the defaults of %s are round centimetres', (name, input, defaults) => {
    const result = RECKON[name]({ ...input, units: 'cm' });
    expect(result.errors).toBeUndefined();
    expect(valuesOf(result.working)).toMatchObject(defaults);
  });

  test.each(DEFAULTS)(
    '%s shows no length that is an inch’s fraction turned into centimetres',
    (name, input) => {
      const { working } = RECKON[name]({ ...input, units: 'cm' });
      const texts = working.map(({ value, how }) => `${value} ${how}`).join('\n');
      expect(texts).not.toMatch(/10\.16|101\.6|1\.27\b|0\.635|6\.35|30\.48|25\.4\b|5\.08/);
    },
  );

  test('the backing is the sum of the round numbers', () => {
    // Geometry: 150 + 2 × 10 = 170 needs 2 × 105 − 2 × 1.5 = 207; 200 + 2 × 10 = 220; 2 × 220 = 440 cm. The other way round
    // 220 needs 3 × 105 − 4 × 1.5 = 309, 3 × 170 = 510 cm.
    const { buy } = reckonBacking({ width: 150, length: 200, units: 'cm' });
    expect(buy).toMatchObject({ unit: 'm', text: '4.4 m' });
  });

  test('a bed of 140 × 200 cm takes a quilt of 200 × 230, and the batting 10 cm more on each side', () => {
    // Geometry: 140 + 2 × 30 = 200; 200 + 30 = 230; with 10 on each side 220 × 250.
    const result = reckonBatting({ bed: '140x200', units: 'cm' });
    expect(valuesOf(result.working)).toMatchObject({
      bedWidth: '200 cm',
      bedLength: '230 cm',
      needWidth: '220 cm',
      needLength: '250 cm',
    });
    // The packages that shops sell by the centimetre, from memory: 225 × 270 is the least that covers it.
    expect(result.buy?.text).toBe('1 queen package, 225 × 270 cm');
  });

  test('a bed keeps its size whatever the units, and a baby’s bed has its caution', () => {
    for (const bed of ['60x120', '70x140'])
      expect(batting({ bed, units: 'cm' }).notes.join(' ')).toContain('where a baby sleeps');
    const inInches = batting({ bed: '140x200', drop: '30 cm', overage: '10 cm' });
    expect(inInches.quilt).toEqual(batting({ bed: '140x200', units: 'cm' }).quilt);
    const queen = batting({ bed: 'queen', drop: '12 in', units: 'cm' });
    expect(queen.quilt).toEqual(batting({ bed: 'queen' }).quilt);
  });

  test('packages of batting are never smaller than they are taken for', () => {
    // The same seven packages, in inches: what is written in centimetres is not above them.
    const sizesIn = (units: string): number[][] =>
      batting({ width: 10, length: 10, overage: 0, units })
        .packages.map(({ width, length }) => [width, length].map(Number.parseFloat))
        .sort((a, b) => a[0]! * a[1]! - b[0]! * b[1]!);
    const inches = sizesIn('in');
    sizesIn('cm').forEach((size, at) =>
      size.forEach((side, way) => expect(side).toBeLessThanOrEqual(inches[at]![way]!)),
    );
  });

  test('a fat quarter is 45 × 50 cm', () => {
    // Geometry: 5 × 4 squares of 10 cm fill it, 21 do not fit.
    const need = (count: number): unknown =>
      good(reckonCutting({ list: `A | square | 10 | ${count}`, sheet: 'fat-quarter', units: 'cm' })).sheets;
    expect([need(20), need(21)]).toEqual([1, 2]);
  });

  test('a reader who asks for other units sees the same quilt, cut by a shop of hers', () => {
    const shown = reckonBacking({ width: '60', length: '80', units: 'in', shown: 'cm' });
    expect(valuesOf(shown.working)).toMatchObject({ overage: '10.16 cm', fabricWidth: '101.6 cm' });
  });

  test('cloth of a usual width with its selvages on is asked about', () => {
    const notes = (width: number): string =>
      good(reckonBacking({ width: 100, length: 100, fabricWidth: width, units: 'cm' })).notes.join(' ');
    expect(notes(110)).toContain('110 cm wide is usually 105 cm');
    expect(notes(140)).toContain('140 cm wide is usually 130 cm');
    expect(notes(105)).not.toContain('selvages');
  });
});
