import { describe, expect, it } from 'vitest';
import { cellsOf, csvOf, tabbedOf } from '../../src/face/export.js';
import { ownWords } from '../../src/ledger/own-words.js';
import { Cut, enoughFor } from '../../src/ledger/purchase.js';
import { exact } from '../../src/measure/exact.js';
import type { WorkingRow } from '../../src/words/told.js';
import { english } from '../sentences.js';
import { readCsv } from './csv.js';

const withoutMark = (text: string): string => text.replace(/^\uFEFF/, '');

describe('CSV', () => {
  it('begins with a byte-order mark, ends each line with CR LF, and has as many fields in each', () => {
    const text = csvOf([
      ['Row', 'Value'],
      ['Width', 66],
    ]);
    expect(text).toBe('\uFEFFRow,Value\r\nWidth,66\r\n');
  });

  // RFC 4180, section 2, rules 5 to 7.
  it.each([
    'plain',
    '',
    ' spaces kept ',
    'a,b',
    'say "so"',
    '"',
    'two\r\nlines',
    'two\nlines',
    '58½ × 70¾ in',
    '“58”',
    '4\' 4"',
  ])('keeps %j', (cell) => {
    expect(
      readCsv(
        withoutMark(
          csvOf([
            [cell, 'next'],
            ['x', cell],
          ]),
        ),
      ),
    ).toEqual([
      [cell, 'next'],
      ['x', cell],
    ]);
  });

  // What spreadsheets take for a formula, and the signs that some keyboards write in their place: OWASP, "CSV injection".
  it.each([
    ...['=1+1', '=cmd()', '+1 now', '@SUM(A1)', '-x', '-1+cmd', '-2/0', '\tx', '\rx', '\nx'],
    ...['＝1+1', '＋1', '－1', '＠SUM(A1)'],
  ])('writes %j so that no spreadsheet reckons it', (cell) => {
    for (const comma of [false, true]) {
      const [[written]] = readCsv(withoutMark(csvOf([[cell]], comma)), comma ? ';' : ',') as [[string]];
      expect(written).toBe(`'${cell}`);
    }
  });

  // A spreadsheet that has another separator begins a new cell there, quotes round the whole or not.
  it.each([
    ['Sky;=1+1', "Sky;'=1+1"],
    ['Sky,=1+1', "Sky,'=1+1"],
    ['Sky\t=1+1', "Sky\t'=1+1"],
    ['Sky\r\n@x', "Sky\r\n'@x"],
    ['Sky; =1+1;-x', "Sky; '=1+1;'-x"],
    ['Sky;＝1', "Sky;'＝1"],
    ['a;"=1', 'a;"\'=1'],
    [' =1', " '=1"],
  ])('writes %j so that it is no formula where it falls apart', (cell, safe) => {
    for (const comma of [false, true])
      expect(readCsv(withoutMark(csvOf([['x', cell]], comma)), comma ? ';' : ',')).toEqual([['x', safe]]);
  });

  it.each(['58 + 2 × 4 = 66 in', '10 - 2', 'a; b, c', '2, 4 1/2', 'no less; -5', 'A | square'])(
    'leaves %j as it is',
    (cell) => expect(readCsv(withoutMark(csvOf([[cell]])))).toEqual([[cell]]),
  );

  it.each([-1, -0.5, '-5', 12.5])('leaves the number %j a number', (cell) => {
    expect(readCsv(withoutMark(csvOf([[cell]])))).toEqual([[String(cell)]]);
  });
});

// A spreadsheet in a language with a decimal comma separates by semicolons, and takes 66.5 for a date or a word.
describe('Where the language writes a decimal comma', () => {
  const cells = [
    ['Row', 'Inches'],
    ['Width, 66,5 in; cut', 66.5],
    ['Back', -12],
  ];

  it('CSV has semicolons between, and numbers with a comma', () => {
    const text = csvOf(cells, true);
    expect(text).toBe('\uFEFFRow;Inches\r\n"Width, 66,5 in; cut";66,5\r\nBack;-12\r\n');
    expect(readCsv(withoutMark(text), ';')).toEqual([
      ['Row', 'Inches'],
      ['Width, 66,5 in; cut', '66,5'],
      ['Back', '-12'],
    ]);
  });

  it('numbers to paste have a comma too', () =>
    expect(tabbedOf(cells, true)).toBe('Row\tInches\nWidth, 66,5 in; cut\t66,5\nBack\t-12\n'));

  it.each([-0.5, '-5', '-5,25', 12.5])('the number %j stays a number', (cell) =>
    expect(readCsv(withoutMark(csvOf([[cell]], true)), ';')).toEqual([[String(cell).replace('.', ',')]]),
  );
});

describe('Text for pasting', () => {
  it('has tabs between cells and one line for each row, with any text in the cells', () => {
    expect(
      tabbedOf([
        ['a\tb', 'c\nd'],
        ['=e', 1.5],
      ]),
    ).toBe("a b\tc d\n'=e\t1.5\n");
  });
});

describe('The cells of a sheet', () => {
  const working: WorkingRow[] = [
    {
      id: 'width',
      label: 'Width',
      value: '52 1/3 in',
      inches: '52 1/3',
      how: 'as typed',
      from: [],
      role: 'given',
    },
    { id: 'panels', label: 'Panels', value: '2', how: '2 × 40 = 80', from: [], role: 'reckoned' },
  ];
  const answer = {
    buy: enoughFor(exact(132), { unit: 'yd', sizes: [exact(36)] }),
    fabric: exact(132),
    spare: exact(12),
    summary: ownWords(''),
    cuts: [new Cut(2, ownWords('panel'), exact(40), exact(66))],
    used: {},
  };

  it('are the working and the cut list, with lengths as shown and as decimal inches', () => {
    const [heads, ...rows] = cellsOf(working, answer, english());
    expect(heads).toHaveLength(4);
    // 52 1/3 to four places
    expect(rows).toEqual([
      ['Width', '52 1/3 in', 52.3333, 'as typed'],
      ['Panels', '2', '', '2 × 40 = 80'],
      ['Cut: panel', '40 × 66 in', '', '2 ×'],
    ]);
  });
});
