import { expect, it } from 'vitest';
import { cutRows, inWay, WAYS, writeCutRows } from '../../src/calculators/cutting/cut-cells.js';
import { readCutList } from '../../src/calculators/cutting/cut-list.js';
import { exact } from '../../src/measure/exact.js';
import { SHEET_NAMES, SHEETS } from '../../src/trade/cloths.js';

const CUTTING = { style: { units: 'in' }, mark: exact(1, 8), seam: exact(1, 4) } as const;

/** What a list asks for, as texts. */
const pieces = (list: unknown): string[] =>
  readCutList(list, CUTTING).map(
    ({ fabric, width, length, count, kind }) =>
      `${count} ${kind} of ${fabric}, ${width.toFraction()} by ${length.toFraction()}`,
  );

it.each([
  ['usual columns', 'A | square | 3 1/2 | 12\nB | rail | 2 x 6 1/2 | 8'],
  ['a head', 'How many; Piece; Fabric; Finished size\n12; square; A; 3 in\n8; half-square triangles; B; 3'],
  ['a width and a length', 'Fabric\tWidth\tLength\tQty\nA\t3\t4 1/2\t7'],
  [
    'a kind beside the size',
    'A | point | 3 in half-square triangles | 8\nA | hourglass | 4 quarter-square finished | 6',
  ],
  ['squares that are counted', 'A | squares for half-square triangles | 3 finished | 4'],
  ['German words', 'Stoff; Teil; Fertigmaß; Anzahl\nA; Halbquadrat-Dreieck; 8 cm; 12'],
])('a list with %s is the same after it was typed in cells', (_, list) => {
  const rows = cutRows(list) ?? expect.fail('It is not in cells.');
  const text = writeCutRows(rows);
  expect(pieces(text)).toEqual(pieces(list));
  expect(cutRows(text)).toEqual(rows);
});

it.each([
  ['no column for the size', 'Piece; How many\nsquare; 3'],
  ['no column for how many', 'Piece; Cut size\nsquare; 3'],
  ['a line without marks', 'A square 3 12'],
])('a list with %s cannot be put in cells', (_, list) => {
  expect(cutRows(list)).toBeUndefined();
});

it('a first row that looks like a head is a row all the same', () => {
  const row = { fabric: 'cloth', piece: 'patch', width: '', length: '', count: '4', way: 'rectangle' };
  expect(cutRows(writeCutRows([row, { ...row, width: '3' }]))).toEqual([row, { ...row, width: '3' }]);
});

it('a row is cut in the way that somebody chose, whatever its name said', () => {
  for (const piece of [
    'point',
    'half-square triangles',
    'HST',
    'finished QST units',
    'Viertelquadrat-Dreiecke',
  ])
    for (const way of WAYS) {
      const row = inWay({ fabric: 'A', piece, width: '3', length: '', count: '8' }, way);
      expect(cutRows(writeCutRows([row])), `${piece}, ${way}`).toEqual([row]);
    }
});

it('empty rows and bars in a name do no harm', () => {
  const row = { fabric: 'A', piece: 'left | right', width: '3', length: '5', count: '2', way: 'half' };
  expect(cutRows(writeCutRows([{}, row, { way: 'half' }]))).toEqual([{ ...row, piece: 'left / right' }]);
});

it('every sheet is offered', () => {
  expect([...SHEET_NAMES].sort()).toEqual(Object.keys(SHEETS).sort());
});
