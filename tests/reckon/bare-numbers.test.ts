import { describe, expect, it } from 'vitest';
import {
  reckonBacking,
  reckonBatting,
  reckonBinding,
  reckonBorders,
  reckonCutting,
  reckonTop,
  reckonWorksheet,
} from '../../src/reckon.js';
import { answersOf, row } from './asked.js';
import { packagesField } from '../../src/calculators/batting/packages.js';
import { cutListInUnit } from '../../src/calculators/cutting/cut-list.js';
import { cuttingFields } from '../../src/calculators/cutting/shape.js';

// Which unit a number without one has is the convention of this project, not a fact of the trade.

describe('a unit at every length that names none', () => {
  it.each([
    ['A | square | 3 1/2 | 48', 'A | square | 3 1/2 cm | 48'],
    ['A | half-square triangles | 3 in finished | 24', 'A | half-square triangles | 3 in finished | 24'],
    ['A | strip | 2½ x 40 | 3', 'A | strip | 2½ x 40 cm | 3'],
    ['A | squares, 3 in a row | 5 finished | 2', 'A | squares, 3 in a row | 5 cm finished | 2'],
    [
      'Number | Size | Fabric | Piece\n12 | 4 x 5 | A2 | patch 3',
      'Number | Size | Fabric | Piece\n12 | 4 x 5 cm | A2 | patch 3',
    ],
    [
      'How many | Wide | Long | Fabric | Piece\n12 | 4 | 5 1/2 | A | brick',
      'How many | Wide | Long | Fabric | Piece\n12 | 4 cm | 5 1/2 cm | A | brick',
    ],
    ['A | square | fin', 'A | square | fin'],
    ['typed so far 3', 'typed so far 3'],
  ])('of the list %j', (list, marked) => {
    expect(cutListInUnit(list, 'cm')).toBe(marked);
    expect(cutListInUnit(marked, 'in')).toBe(marked);
  });

  it.each([
    ['small 90 x 110; large 200 x 230 @ 29', 'small 90 x 110 cm; large 200 x 230 cm @ 29'],
    ['no. 3: 100,5 x 200 @ 12,50', 'no. 3: 100,5 x 200 cm @ 12,50'],
    ['crib 45 x 60 in', 'crib 45 x 60 in'],
    ['something', 'something'],
  ])('of the packages %j', (list, marked) => {
    const trimmed = (text: string): string => text.replace(/\s+/g, ' ').trim();
    expect(trimmed(packagesField.marked!(list, 'cm'))).toBe(marked);
  });

  it.each([
    ['45 x 50', '45 x 50 cm'],
    ['fat-quarter', 'fat-quarter'],
  ])('of the sheet %s', (text, marked) => {
    expect(cuttingFields.sheet.marked!(text, 'cm')).toBe(marked);
  });
});

describe('shown in other units than the author’s, a row says what its bare numbers are in', () => {
  const rowOf = ({ working }: { working: { id: string; value: string }[] }, id: string): string =>
    working.find((row) => row.id === id)!.value;

  it('of a cut list, a sheet and packages, and the answer is the same', () => {
    const cutting = { units: 'in', list: 'A | square | 3 1/2 | 48', sheet: '18 x 20' };
    const inches = reckonCutting(cutting);
    const shown = reckonCutting({ ...cutting, shown: 'cm' });
    expect(rowOf(inches, 'list')).toBe('A | square | 3 1/2 | 48');
    expect(rowOf(shown, 'list')).toBe('A | square | 3 1/2 in | 48');
    expect(rowOf(shown, 'sheet')).toBe('18 x 20 in');
    expect(shown.buy?.amount).toBe(inches.buy?.amount);
    const batting = { units: 'cm', width: 150, length: 180, packages: 'small 170 x 200; large 250 x 260' };
    expect(rowOf(reckonBatting({ ...batting, shown: 'in' }), 'packages').replace(/ +/g, ' ')).toBe(
      'small 170 x 200 cm; large 250 x 260 cm',
    );
    expect(rowOf(reckonBacking({ width: 'wide', length: 70, shown: 'cm' }), 'width')).toBe('wide');
  });
});

/** The same input with a unit after each of its numbers, also in lists and in what was measured. */
const withUnit = (value: unknown, unit: string): unknown =>
  typeof value === 'number'
    ? `${value} ${unit}`
    : Array.isArray(value)
      ? value.map((part) => withUnit(part, unit))
      : Object(value) === value
        ? Object.fromEntries(
            Object.entries(value as object).map(([key, part]) => [key, withUnit(part, unit)]),
          )
        : value;

/** The same input with each of its numbers as text. */
const asText = (value: unknown): unknown =>
  JSON.parse(JSON.stringify(value), (_, part: unknown) => (typeof part === 'number' ? `${part}` : part));

describe('a number is in `units`, as a text is', () => {
  it('147 on a page in centimetres is 147 cm', () => {
    const { need, working } = answersOf(reckonBacking)({ units: 'cm', width: 147, length: 178, overage: 10 });
    // Geometry: 147 + 2 × 10 = 167 cm = 167 × 50/127 = 8350/127 in.
    expect(need.width).toBe('65 95/127');
    expect(row({ working }, 'width')).toMatchObject({ value: '147 cm', inches: '57 111/127' });
  });

  // Only lengths are numbers here; what is no length is text, so that a unit may be put to every number.
  const LENGTHS: [name: string, reckon: (input: never) => unknown, input: object][] = [
    [
      'backing',
      reckonBacking,
      {
        width: 147,
        length: 178.5,
        overage: 10,
        fabricWidth: 106,
        seam: 1.25,
        repeat: 30,
        shrinkage: '3',
        measured: { washedWidth: 102 },
      },
    ],
    ['batting', reckonBatting, { width: 147, length: 178, overage: 7.5, roll: [230, 240.5] }],
    ['batting from one roll', reckonBatting, { width: 147, length: 178, roll: 240 }],
    ['bed', reckonBatting, { bed: 'queen', drop: 30, tuck: 20 }],
    [
      'binding',
      reckonBinding,
      {
        width: 147,
        length: 178,
        stripWidth: 6.5,
        fabricWidth: 106,
        allowance: 25,
        thickness: 0.3,
        mark: 0.1,
      },
    ],
    ['binding, measured', reckonBinding, { perimeter: 650, finished: 1, measured: { around: 655 } }],
    ['borders', reckonBorders, { width: 147, length: 178, borders: [5, 11.5], fabricWidth: 106, seam: 0.75 }],
    ['border', reckonBorders, { width: 147, length: 178, borders: 5 }],
    ['top', reckonTop, { block: 30, across: '4', down: '5', sashing: 5, measured: { finishedWidth: 136 } }],
    [
      'cutting',
      reckonCutting,
      { list: 'A | square | 9 cm | 48', fabricWidth: 106, ruler: 60, widths: { A: 107 }, usualWidth: 105 },
    ],
    [
      'worksheet',
      reckonWorksheet,
      {
        width: 147,
        length: 178,
        fabricWidth: 106,
        seam: 0.75,
        bolt: 1400,
        kits: '3',
        fabrics: [{ letter: 'A', fabricWidth: 100 }],
      },
    ],
  ];
  const plain = (result: unknown): unknown =>
    JSON.parse(JSON.stringify(result), (key, part: unknown) =>
      /^(value|how)$/.test(key) ? undefined : part,
    );

  it.each(LENGTHS)('in %s, centimetres and inches', (_, reckon, input) => {
    for (const units of ['cm', 'in']) {
      const asked = (given: unknown): unknown => plain(reckon({ ...(given as object), units } as never));
      const reckoned = asked(input);
      expect(reckoned).not.toHaveProperty('errors');
      expect(reckoned).toEqual(asked(asText(input)));
      expect(reckoned).toEqual(asked(withUnit(input, units)));
    }
  });

  it('in a step, in a list’s cells and in packages', () => {
    const cutting = { units: 'cm', fabricWidth: 106 };
    const rows = (size: unknown): unknown =>
      plain(reckonCutting({ ...cutting, list: [['A', 'square', size, 48]] }));
    expect(rows(9)).toEqual(rows('9 cm'));
    const stepped = (increment: unknown): unknown =>
      plain(reckonBacking({ units: 'cm', width: 147, length: 178, increment }));
    expect(stepped(25)).toEqual(stepped('25 cm'));
    const packed = (width: unknown, length: unknown): unknown =>
      plain(
        reckonBatting({
          units: 'cm',
          width: 147,
          length: 178,
          packages: [{ name: 'large', width, length, price: 29 }],
        }),
      );
    expect(packed(228, 274)).toEqual(packed('228 cm', '274 cm'));
  });

  it('but the parts of a worksheet are results, so their numbers are exact inches', () => {
    const bought = (need: unknown, width: unknown): unknown =>
      plain(reckonWorksheet({ units: 'cm', parts: [{ title: 'Back', fabric: 'A', need, width } as never] }));
    expect(bought(100, 40)).toEqual(bought('100', '40'));
    expect(bought(100, 40)).toMatchObject({ fabric: '100' });
  });
});
