import { describe, expect, it } from 'vitest';
import { reckonBacking, reckonBatting, reckonCutting } from '../../src/reckon.js';
import { cutListInUnit } from '../../src/reckon/cut-list.js';
import { packagesInUnit } from '../../src/reckon/packages.js';
import { cuttingFields } from '../../src/reckon/cutting.js';

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
    expect(trimmed(packagesInUnit(list, 'cm'))).toBe(marked);
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
