import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exact } from '../../src/measure/exact.js';
import { readCutList, writeCutList } from '../../src/calculators/cutting/cut-list.js';
import { Refusal } from '../../src/ledger/refusal.js';
import { reckonCutting } from '../../src/reckon.js';
import { cutting as words } from '../../src/words/en/cutting.js';
import { english } from '../sentences.js';

const t = english(words);
const inInches = { style: { units: 'in' }, mark: exact(1, 8), seam: exact(1, 4) } as const;

/** What is read, as a person would write it: fabric, piece, width, length, how many. */
const read = (list: unknown, cutting: Parameters<typeof readCutList>[1] = inInches): (string | number)[][] =>
  readCutList(list, cutting).map(({ fabric, piece, width, length, count }) => [
    fabric,
    t.say(piece),
    width.toFraction(true),
    length.toFraction(true),
    count,
  ]);

/** The sentence with which a list is refused. */
const refusal = (list: unknown): string => {
  try {
    readCutList(list, inInches);
  } catch (error) {
    if (error instanceof Refusal) return t.say(error.problem);
    throw error;
  }
  return expect.fail('The list was taken.');
};

describe('the head of a cut list', () => {
  // The words are the tests' own: whatever a person may head such a column with.
  const HEADS = {
    fabric: ['Fabric', 'fabric', 'Cloth', 'Colour', 'Color', 'Letter', 'Fabric letter', 'From which fabric'],
    piece: [
      'Piece',
      'Patch',
      'PIECE',
      'Shape',
      'Unit',
      'Part',
      'Name',
      'For what',
      'What it is',
      'Pieces for',
    ],
    size: [
      'Cut size',
      'Size',
      'Dimensions',
      'Cut size (in)',
      'Measure',
      'Size (width × length)',
      'Width by length',
      'Cut',
    ],
    count: [
      'How many',
      'Number',
      'Count',
      'Quantity',
      'Qty',
      'No.',
      '#',
      'Number of pieces',
      'how many to cut',
    ],
  };
  const ROWS = [
    ['A', 'square', '3 1/2', '12'],
    ['B', 'rail', '2 1/2 x 6 1/2', '40'],
    ['C', 'corner', '3 1/2', '4'],
  ] as const;
  const READ = [
    ['A', 'square', '3 1/2', '3 1/2', 12],
    ['B', 'rail', '2 1/2', '6 1/2', 40],
    ['C', 'corner', '3 1/2', '3 1/2', 4],
  ];

  test('says which column is which, in any order and with columns of the author’s own between', () => {
    const columns = fc.shuffledSubarray(['fabric', 'piece', 'size', 'count', 'mine'] as const, {
      minLength: 5,
    });
    const words = fc.record({
      fabric: fc.constantFrom(...HEADS.fabric),
      piece: fc.constantFrom(...HEADS.piece),
      size: fc.constantFrom(...HEADS.size),
      count: fc.constantFrom(...HEADS.count),
    });
    fc.assert(
      fc.property(columns, words, (order, heads) => {
        const own = { ...heads, mine: 'Notes' };
        const rows = ROWS.map(([fabric, piece, size, count]) => ({
          fabric,
          piece,
          size,
          count,
          mine: 'press open',
        }));
        const list = [own, ...rows].map((row) => order.map((column) => row[column]));
        expect(read(list)).toEqual(READ);
        expect(read(list.map((line) => line.join('\t')).join('\r\n'))).toEqual(READ);
      }),
      { numRuns: 300 },
    );
  });

  test('may give width and length a column each, in either order', () => {
    const rows = [
      ['A', 'rail', '2 1/2', '6 1/2', '40'],
      ['B', 'square', '3', '3', '1'],
    ];
    const READ = [
      ['A', 'rail', '2 1/2', '6 1/2', 40],
      ['B', 'square', '3', '3', 1],
    ];
    for (const [width, length] of [
      ['Width', 'Length'],
      ['Cut width', 'Cut length'],
      ['How wide', 'How long'],
      ['Across', 'Down'],
      ['Width (size)', 'Height (size)'],
    ]) {
      expect(read([['Fabric', 'Piece', width, length, 'How many'], ...rows])).toEqual(READ);
      const turned = rows.map(([fabric, piece, wide, long, many]) => [many, long, piece, wide, fabric]);
      expect(read([['Count', length, 'Patch', width, 'Fabric'], ...turned])).toEqual(READ);
    }
  });

  test('may be left out: then the columns are fabric, piece, cut size, how many', () => {
    expect(read(ROWS.map((row) => [...row]))).toEqual(READ);
    expect(read('A | square for the size of a number | 3 1/2 | 12')).toEqual([
      ['A', 'square for the size of a number', '3 1/2', '3 1/2', 12],
    ]);
  });

  test('is no head if only one of its words is there', () => {
    expect(refusal('A | unit of the star | large | some')).toMatch(/^Row 1, unit of the star: /);
  });

  test('may say “Pieces” for their number or for their names', () => {
    expect(read('Fabric; Shape; Size; Pieces\nA; square; 3; 12')).toEqual([['A', 'square', '3', '3', 12]]);
    expect(read('Fabric; Pieces; Size; How many\nA; square; 3; 12')).toEqual([['A', 'square', '3', '3', 12]]);
  });

  test('may leave out the fabric and the piece', () => {
    expect(read('Size | How many\n3 1/2 | 12')).toEqual([['', 'piece', '3 1/2', '3 1/2', 12]]);
  });

  test.each([
    ['the cut size', 'Fabric | Piece | How many\nA | square | 12'],
    ['the cut size', 'Fabric | Piece | Width | How many\nA | square | 3 | 12'],
    ['the number of pieces', 'Fabric | Piece | Cut size\nA | square | 3 1/2'],
    ['the number of pieces', 'Fabric | Piece | Width | Length\nA | square | 3 | 3'],
  ])('without a column for %s is refused, with the head to write', (what, list) => {
    expect(refusal(list)).toMatch(new RegExp(`has no column for ${what}\\. Head one “.+”\\.$`));
  });
});

describe('a line of a cut list', () => {
  test('is text with tabs, | or semicolons between its cells, or a row of cells', () => {
    const READ = [['A', 'square', '3 1/2', '3 1/2', 12]];
    for (const line of [
      'A | square | 3 1/2 | 12',
      'A|square|3 1/2|12',
      'A; square; 3½; 12',
      'A\tsquare\t3.5\t12',
      ' A |  square | 3-1/2" | 12 ',
    ])
      expect(read(`\n${line}\r\n\r\n`)).toEqual(READ);
    expect(read([['A', 'square', 3.5, 12]])).toEqual(READ);
  });

  test('pasted from a spreadsheet keeps the text of its cells', () => {
    expect(read('A\tsquare; the light one | or cream\t3 1/2\t12\nA\trail\t2 1/2 × 6 1/2\t4')).toEqual([
      ['A', 'square; the light one | or cream', '3 1/2', '3 1/2', 12],
      ['A', 'rail', '2 1/2', '6 1/2', 4],
    ]);
    expect(read('\tsquare\t3 1/2\t12')).toEqual([['', 'square', '3 1/2', '3 1/2', 12]]);
  });

  test('may come five hundred times', () => {
    expect(read(Array.from({ length: 500 }, () => 'A | square | 3 | 1').join('\n'))).toHaveLength(500);
  });

  // Common practice, no source: patterns write “4 ×”, lists copied from elsewhere end their lines with a semicolon.
  test.each([
    'A | square | 3 1/2 | 12;',
    'A | square | 3 1/2 | 12 ; ',
    'A; square; 3 1/2; 12;',
    'A\tsquare\t3 1/2\t12;',
    'A | square | 3 1/2 | 12×',
    'A | square | 3 1/2 | 12 ×',
    'A | square | 3 1/2 | 12 x',
    'A | square | 3 1/2 | x 12',
    'A | square | 3 1/2 | X12;',
    'Fabric | How many | Piece | Size\nA | 12 x | square | 3 1/2',
  ])('takes %j as twelve', (list) => {
    expect(read(list)).toEqual([['A', 'square', '3 1/2', '3 1/2', 12]]);
  });

  test('takes no line that begins with pieces for a head, which would leave it out', () => {
    // “Fabric” and “patch” could head two columns; the number of pieces says that they do not.
    expect(read('Fabric A | patch | square, 3 1/2 in | x 4')).toEqual([
      ['Fabric A', 'patch', '3 1/2', '3 1/2', 4],
    ]);
  });

  test('takes a size as people write it', () => {
    const size = (written: string): unknown => read([['A', 'rail', written, '1']])[0]!.slice(2, 4);
    for (const written of [
      '2 1/2 x 6 1/2',
      '2½ × 6½',
      '2.5 by 6.5 in',
      '2 1/2" × 6 1/2"',
      '2 1/2 in x 6 1/2 in (cut)',
      '(2 1/2 x 6 1/2)',
      '63.5 mm x 16.51 cm',
    ])
      expect(size(written), written).toEqual(['2 1/2', '6 1/2']);
    for (const written of [
      '3 1/2',
      '3 1/2 in square',
      '3 1/2" squares',
      '3 1/2 x 3 1/2',
      'square, 3 1/2 in',
      '3 1/2 in unfinished',
    ])
      expect(size(written), written).toEqual(['3 1/2', '3 1/2']);
    // 9.5 cm are 95 ÷ 25.4 in, and on a mark of 1 mm
    expect(
      read('A | square | 9,5 x 9,5 cm | 2', {
        ...inInches,
        style: { units: 'cm', comma: true },
        mark: exact(5, 127),
      }),
    ).toEqual([['A', 'square', '3 94/127', '3 94/127', 2]]);
  });

  // “Cutting half- and quarter-square triangles”, All People Quilt; “How to measure and cut triangles”, Granny Maud’s
  // Girl, 11 June 2018: 1/2, 7/8 and 1 1/4 in are added to a finished size.
  test.each([
    ['square', '3 finished', '3 1/2', 12],
    ['square', '3', '3', 12],
    ['square, finished', '3', '3 1/2', 12],
    ['half-square triangles', '3 finished', '3 7/8', 6],
    ['half square triangle', 'finished 3 in', '3 7/8', 6],
    ['HST', '3 7/8', '3 7/8', 6],
    ['triangles', '3 finished half-square triangles', '3 7/8', 6],
    ['quarter-square triangles', '3 finished', '4 1/4', 3],
    ['QSTs', '4 1/4 square', '4 1/4', 3],
  ])('%s, %s: 12 of them are cut as %s in squares, %d in number', (piece, size, cut, count) => {
    expect(read([['A', piece, size, '12']])[0]!.slice(2)).toEqual([cut, cut, count]);
  });

  test('reads finished sizes if the head says so, so that every piece gets its seams', () => {
    expect(read('Piece | Finished size | How many\nsquare | 3 | 12\nHST | 3 | 12')).toEqual([
      ['', 'square', '3 1/2', '3 1/2', 12],
      ['', 'HST', '3 7/8', '3 7/8', 6],
    ]);
    expect(read('Piece | Finished width | Finished length | How many\nrail | 2 | 6 | 1')).toEqual([
      ['', 'rail', '2 1/2', '6 1/2', 1],
    ]);
    expect(read('Piece | Unfinished size | How many\nsquare | 3 | 12')).toEqual([
      ['', 'square', '3', '3', 12],
    ]);
  });

  test('is cut on a mark of the ruler, never below the written size, with the given seam allowance', () => {
    expect(read('A | square | 3.3 | 1')[0]!.slice(2)).toEqual(['3 3/8', '3 3/8', 1]);
    expect(read('A | square | 3 finished | 1', { ...inInches, seam: exact(3, 8) })[0]!.slice(2)).toEqual([
      '3 3/4',
      '3 3/4',
      1,
    ]);
  });

  test('has room for the seams of a triangle, whatever they are', () => {
    // Geometry: a triangle with an allowance S all round, two from a square: the square's side is the finished short side
    // + S (2 + √2); four from a square: the finished long side + S (2 + 2 √2).
    for (const seam of [1, 2, 3, 4, 8])
      for (const [kind, rest] of [
        ['half', 2 + Math.SQRT2],
        ['quarter', 2 + 2 * Math.SQRT2],
      ] as const) {
        const cutting = { ...inInches, seam: exact(seam, 8), mark: exact(1, 64) };
        const [piece] = readCutList(`A | ${kind}-square triangles | 3 finished | 1`, cutting);
        expect(piece!.width.valueOf(), kind).toBeGreaterThanOrEqual(3 + (seam / 8) * rest);
      }
  });

  test('that counts the squares for triangles is not halved', () => {
    expect(read('A | squares for half-square triangles | 3 7/8 | 12')[0]![4]).toBe(12);
    expect(read('A | half-square triangles | 3 7/8 | 12')[0]![4]).toBe(6);
  });

  test('never gives fewer triangles than the list needs', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2000 }), (count) => {
        for (const [kind, each] of [
          ['half', 2],
          ['quarter', 4],
        ] as const) {
          const squares = read([['A', `${kind}-square triangles`, '3', String(count)]])[0]![4] as number;
          expect(squares * each).toBeGreaterThanOrEqual(count);
          expect((squares - 1) * each).toBeLessThan(count);
        }
      }),
    );
  });

  test.each([
    ['A | square | 3 1/2', /^Row 1, square: How many is missing\. Write it like 12\.$/],
    ['A | square | 3 1/2 | a few', /^Row 1, square: “a few” is not a number of pieces\. Write it like 12\.$/],
    ['A | square | 3 1/2 | 1.5', /^Row 1, square: “1\.5” is not a number of pieces\./],
    ['A | square | 3 1/2 | 2 x 4', /^Row 1, square: “2 x 4” is not a number of pieces\./],
    ['A | square | 3 1/2 | x 4 x', /^Row 1, square: “x 4 x” is not a number of pieces\./],
    ['A | square | 3 1/2 | 12; B | square | 3 1/2 | 12;', /^Row 1, square: “12; B” is not a number/],
    ['A | square | 3 1/2 | -4', /^Row 1, square: “-4” is not a number of pieces\./],
    ['A | rail | 2 | 4\nA | square | large | 12', /^Row 2, square: “large” is not a length\./],
    ['A | square | 0 | 12', /^Row 1, square: “0”: a size has to be more than 0\. Write it like 3 1\/2/],
    ['A | square | -3 | 12', /^Row 1, square: “-3”: a size has to be more than 0\./],
    ['A | square | | 12', /^Row 1, square: .* Write it like 52 1\/2/],
    [
      'A | square | 3 1/2 | 1000001',
      /^Row 1, square: That is more than a million pieces\. Write fewer, like 1000\.$/,
    ],
    ['', /^The cut list is empty\. Write a line like A \| square \| 3 1\/2 \| 12\.$/],
    ['Fabric | Piece | Cut size | How many', /^The cut list is empty\./],
    [
      Array.from({ length: 501 }, () => 'A | square | 3 | 1').join('\n'),
      /^A cut list of more than 500 lines/,
    ],
  ])('that cannot be read is named: %j', (list, sentence) => {
    expect(refusal(list)).toMatch(sentence);
  });
});

describe('a list that is written out', () => {
  test('reads back the same', () => {
    const word = fc
      .stringMatching(/^[a-zA-Z]{1,8}$/)
      .filter((text) => !/square|hst|qst|finished/i.test(text));
    const rows = fc.array(
      fc.tuple(
        fc.constantFrom('A', 'B', ''),
        word,
        fc.constantFrom('3 1/2', '2 x 4 1/4', '9 cm'),
        fc.integer({ min: 1, max: 99 }).map(String),
      ),
      { minLength: 1, maxLength: 8 },
    );
    fc.assert(
      fc.property(rows, (list) => {
        expect(read(writeCutList(list))).toEqual(read(list));
      }),
    );
  });

  test('keeps its columns, with any text in a cell', () => {
    const list = [['A', 'light | dark; both\tof them', '3 1/2', '12']];
    expect(read(writeCutList(list))[0]!.slice(2)).toEqual(['3 1/2', '3 1/2', 12]);
  });
});

describe('junk', () => {
  const junk = fc.oneof(
    fc.anything({
      withNullPrototype: true,
      withBigInt: true,
      withDate: true,
      withMap: true,
      withSparseArray: true,
      withTypedArray: true,
    }),
    fc.array(fc.array(fc.anything({ withNullPrototype: true, withBigInt: true }))),
    fc.string({ unit: 'binary' }),
    fc
      .array(
        fc.array(
          fc.constantFrom(
            'Fabric',
            'Size',
            'How many',
            'Width',
            'A',
            '3 1/2',
            '12',
            '',
            '0',
            '-1',
            '1/0',
            '9999999999',
            '3 x 4 x 5',
            'x',
            'finished',
            '<b>',
          ),
          { maxLength: 6 },
        ),
      )
      .map((lines) => lines.map((line) => line.join(' | ')).join('\n')),
  );

  test('of every kind is refused in a sentence, and never throws anything else', () => {
    fc.assert(
      fc.property(junk, (list) => {
        try {
          for (const { width, length, count } of readCutList(list, inInches)) {
            expect(width.gt(0) && length.gt(0)).toBe(true);
            expect(Number.isSafeInteger(count)).toBe(true);
          }
        } catch (error) {
          if (!(error instanceof Refusal)) throw error;
          expect(t.say(error.problem)).toMatch(/^[A-Z“].*[.?]$/su);
        }
        expect(typeof writeCutList(list)).toBe('string');
      }),
      { numRuns: 1000 },
    );
  });

  test('in any input of the calculator becomes an error with a sentence', () => {
    const KEYS = [
      'list',
      'sheet',
      'fabricWidth',
      'oneWay',
      'ruler',
      'mat',
      'mark',
      'shrinkage',
      'increment',
      'price',
      'currency',
      'units',
      'lang',
      'measured',
    ];
    fc.assert(
      fc.property(fc.dictionary(fc.constantFrom(...KEYS), junk), (input) => {
        const result = reckonCutting({ list: 'A | square | 3 | 4', ...input });
        if (result.errors) {
          expect(result.buy).toBeUndefined();
          for (const { message } of result.errors) expect(message).toMatch(/^[A-Z“].*[.?]$/su);
        } else expect(JSON.stringify(result)).not.toMatch(/NaN|Infinity|undefined/);
      }),
      { numRuns: 300 },
    );
  });
});
