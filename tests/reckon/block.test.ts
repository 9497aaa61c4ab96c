import { describe, expect, test } from 'vitest';
import { block as calculator } from '../../src/calculators/block/block.js';
import { isMessage, type Message } from '../../src/measure/message.js';
import { reckonBlock, reckonCutting } from '../../src/reckon.js';
import { answersOf, row } from './asked.js';

const block = answersOf(reckonBlock);
const cuts = (input: object): string[] =>
  block(input).cuts.map(({ count, piece, text }) => `${count} ${piece}, ${text}`);

/** A table cell with its attributes. */
const cell = (text: string, more: object = {}) => ({ text, ...more });

describe('the chart of a block', () => {
  const NINE = [
    ['A', 'B', 'A'],
    ['B', 'A', 'B'],
    ['A', 'B', 'A'],
  ];

  test.each<[what: string, chart: unknown]>([
    ['a line for each row', 'A B A\nB A B\nA B A'],
    ['semicolons', 'A B A; B A B; A B A;'],
    ['both, with empty lines', '\n\n A B A;\r\n B A B;\n\n A B A\n'],
    ['marks between the cells', 'A|B|A\nB | A | B\nA |B| A'],
    ['marks at both ends', '| A | B | A |\n| B | A | B |\n| A | B | A |'],
    ['tabs', 'A\tB\tA\nB\tA\tB\nA\tB\tA'],
    ['a list of lists', NINE],
    ['a table', NINE.map((row) => row.map((text) => cell(` ${text}\n`)))],
  ])('is read from %s', (_, chart) => {
    const { cuts, letters } = block({ chart, block: 9, count: 20 });
    expect(letters).toEqual([
      { fabric: 'A', pieces: 5, area: '45' },
      { fabric: 'B', pieces: 4, area: '36' },
    ]);
    // Geometry: 9 ÷ 3 + 2 × 1/4 = 3 1/2 in; 5 × 20 and 4 × 20.
    expect(cuts.map(({ count, piece, text }) => [count, piece, text])).toEqual([
      [100, 'A · square', '3 1/2 × 3 1/2 in'],
      [80, 'B · square', '3 1/2 × 3 1/2 in'],
    ]);
  });

  test('has larger patches by colspan and rowspan, and rows that others cover', () => {
    const table = [
      [cell('A', { colspan: '2', rowspan: '2' }), cell('B')],
      [cell('B')],
      [cell('B', { colspan: '3' })],
    ];
    const asText = 'A 2x2 | B\nB\nB 3x1';
    for (const chart of [table, asText])
      // Geometry: cells of 3 in; 6 + 1/2 and 9 + 1/2 in.
      expect(cuts({ chart, block: 9 })).toEqual([
        '1 A · square, 6 1/2 × 6 1/2 in',
        '2 B · square, 3 1/2 × 3 1/2 in',
        '1 B · rectangle, 3 1/2 × 9 1/2 in',
      ]);
    const covered = [[cell('A', { rowspan: 2 }), cell('B', { rowspan: 2 })], [], [cell('C'), cell('D')]];
    for (const chart of [covered, 'A 1x2 | B 1x2\n-\nC | D', 'C | D\nA 1 × 2 | B (1 x 2)'])
      expect(block({ chart, block: 6 }).rows).toBe(3);
  });

  test('may be typed with the strokes of any keyboard, and with spaces round them', () => {
    const pair = cuts({ chart: 'A/B A; A A', block: 6 });
    for (const written of ['A / B A; A A', 'A ∕ B A; A A', 'A\\B A; A A', 'A ＼ B A; A A'])
      expect(cuts({ chart: written, block: 6 })).toEqual(pair);
  });

  test('has fabrics with a number or an accent, and tells small letters from large ones', () => {
    const { letters } = block({ chart: 'A1 a Ä 12; A b Ω 3', block: 8 });
    expect(letters.map(({ fabric }) => fabric)).toEqual(['A1', 'a', 'Ä', '12', 'A', 'b', 'Ω', '3']);
  });

  test('is shown as text that gives the same chart again', () => {
    const table = [
      [cell('B A B', { colspan: 2, goose: 'down' }), cell('A', { rowspan: 4 }), cell('A / B')],
      [cell('A in B', { colspan: '2', rowspan: '2' }), cell('A/B/A/C')],
      [cell('C')],
      [cell('C'), cell('B'), cell('A')],
    ];
    const written = row(block({ chart: table, block: 12 }), 'chart').value;
    expect(written).toBe('B A B 2x1 down | A 1x4 | A/B\nA in B 2x2 | A/B/A/C\nC\nC | B | A');
    const wide = { ...block({ chart: table, block: 12 }), working: [] };
    expect({ ...block({ chart: written, block: 12 }), working: [] }).toEqual(wide);
    const [alone] = ['| A in B |'].map((chart) => row(block({ chart, block: 6 }), 'chart').value);
    expect(alone).toBe('| A in B |');
  });
});

describe('what to cut', () => {
  // "How to measure and cut triangles", Granny Maud's Girl, 11 June 2018: 2 in finished → 2 7/8 in squares.
  // "Cutting half- and quarter-square triangles", All People Quilt: 3 in finished → 3 7/8 in.
  test.each([
    [4, '2 7/8'],
    [6, '3 7/8'],
  ])('two half-square triangles at a time, in a block of %s in', (size, square) =>
    expect(cuts({ chart: 'A/B B\\A; A/B A\\B', block: size })).toEqual([
      `2 A · square for half-square triangles, two at a time, ${square} × ${square} in`,
      `2 B · square for half-square triangles, two at a time, ${square} × ${square} in`,
    ]),
  );

  // "Quilting basics: half-square triangles 8 at a time", theashleytomlinson.com: 2 × (finished + 7/8); 5 in → 11 3/4 in.
  test('eight half-square triangles at a time', () =>
    expect(cuts({ chart: 'A/B', block: 5, count: 8, method: 'eight' })).toEqual([
      '1 A · square for half-square triangles, eight at a time, 11 3/4 × 11 3/4 in',
      '1 B · square for half-square triangles, eight at a time, 11 3/4 × 11 3/4 in',
    ]));

  // Geometry: 4 units in each of 24 blocks are 96; two at a time are 48 squares of each fabric, eight at a time 12.
  test.each([
    ['two', 24, 48],
    ['eight', 24, 12],
    // 3 blocks of one unit each: whole squares are counted for all blocks together.
    ['two', 1, 2],
    ['eight', 1, 1],
  ])('whole squares are counted for all blocks together: %s at a time, %s blocks', (method, count, squares) =>
    expect(
      block({ chart: 'A/B B/A; A\\B B\\A', block: 8, count, method }).cuts.map(({ count }) => count),
    ).toEqual([squares, squares]),
  );

  test('five blocks with one unit each take three squares, not five', () =>
    expect(block({ chart: 'A/B', block: 4, count: 5 }).cuts.map(({ count }) => count)).toEqual([3, 3]));

  // "Cutting half- and quarter-square triangles", All People Quilt: 3 in finished → 4 1/4 in strips.
  test('quarter-square triangles, four from a square', () =>
    expect(cuts({ chart: 'A/B/A/C', block: 3, count: 3 })).toEqual([
      // Geometry: 6 of A, 3 of B, 3 of C.
      '2 A · square, cut twice on the diagonal, for quarter-square triangles, 4 1/4 × 4 1/4 in',
      '1 B · square, cut twice on the diagonal, for quarter-square triangles, 4 1/4 × 4 1/4 in',
      '1 C · square, cut twice on the diagonal, for quarter-square triangles, 4 1/4 × 4 1/4 in',
    ]));

  // Beverly's Quilting Page, chart of flying geese four at a time.
  test.each([
    [8, '9 1/4', '4 7/8'],
    [7, '8 1/4', '4 3/8'],
    [6, '7 1/4', '3 7/8'],
    [5, '6 1/4', '3 3/8'],
    [4, '5 1/4', '2 7/8'],
    [3, '4 1/4', '2 3/8'],
    [2, '3 1/4', '1 7/8'],
  ])('geese %s in wide, four at a time', (wide, goose, sky) =>
    expect(cuts({ chart: 'B A B 2x1|; B A B 2x1 down|; ', block: wide, count: 2, method: 'four' })).toEqual([
      `1 A · square for flying geese, four at a time, ${goose} × ${goose} in`,
      `4 B · sky square for flying geese, four at a time, ${sky} × ${sky} in`,
    ]),
  );

  // Geometry: a goose of 4 × 2 in is a rectangle of 4 1/2 × 2 1/2; a square of 2 1/2 covers each corner.
  test('geese one at a time, and always so if the two sides differ', () => {
    const one = { chart: 'B A C 1x2 left | B A C 1x2 right', block: 4, count: 3 };
    const pieces = [
      '6 B · square to sew over a goose’s corner, 2 1/2 × 2 1/2 in',
      '6 A · rectangle for a flying goose, 2 1/2 × 4 1/2 in',
      '6 C · square to sew over a goose’s corner, 2 1/2 × 2 1/2 in',
    ];
    for (const method of ['one', 'four']) expect(cuts({ ...one, method }).sort()).toEqual([...pieces].sort());
    expect(block({ ...one, method: 'four' }).notes.join()).toContain('two different fabrics');
  });

  // Geometry: the middle of a patch of 6 in has a side of 6 ÷ √2 = 4.243, with 1/2 in 4.743, up to 4 3/4. Each corner has two
  // sides of 3 in, from a square of 3 + 7/8.
  test('a square in a square', () =>
    expect(cuts({ chart: 'A in B', block: 6, count: 2 }).map((cut) => cut.replace(/.*·/, ''))).toEqual([
      ' middle square, on point, 4 3/4 × 4 3/4 in',
      ' square, cut once on the diagonal, for corner triangles round a square, 3 7/8 × 3 7/8 in',
    ]));

  test('follows the seam and the marks of the ruler, and says which sizes lie between them', () => {
    // Geometry: 10 ÷ 3 + 2 × 1/4 = 3 5/6, up to 3 7/8; with seams of 3/8 in, 3 + 3 1/2 × 3/8 = 4 5/16, up to 4 3/8.
    const thirds = block({ chart: 'A B A; B A B; A B A', block: 10 });
    expect(thirds.cuts[0]?.width).toBe('3 7/8');
    expect(thirds.notes.join()).toContain('3 5/6 in, cut 3 7/8 in');
    expect(block({ chart: 'A/B A; A A', block: 6, seam: '3/8' }).cuts[0]?.width).toBe('4 3/8');
    expect(block({ chart: 'A/B A; A A', block: 6, seam: '3/8', mark: '1/16' }).cuts[0]?.width).toBe('4 5/16');
  });

  test('is the same list, planned the same way, as the cutting calculator’s', () => {
    const made = block({ chart: 'A A B; B A A; B B A', block: 12, count: 15 });
    const list = made.letters.map(({ fabric, pieces }) => `${fabric} | square | 4 1/2 | ${pieces * 15}`);
    const planned = answersOf(reckonCutting)({ list: list.join('\n') });
    expect(made.fabrics.map(({ need, layout }) => [need, layout])).toEqual(
      planned.fabrics.map(({ need, layout }) => [need, layout]),
    );
    expect(made.buy).toEqual(planned.buy);
  });
});

describe('the working', () => {
  test('says how the cell, the block with its seams and the patches were got', () => {
    const result = block({ chart: 'A B; B A; A A', block: 12, count: 5 });
    expect(['cell', 'cellLength', 'unfinished', 'patches'].map((id) => row(result, id).how)).toEqual([
      '12 ÷ 2 = 6 in',
      '12 ÷ 3 = 4 in',
      '12 + 2 × 1/4 = 12 1/2 in',
      '6 × 5 = 30',
    ]);
  });

  test('says what the other method takes, where that differs', () => {
    const input = { chart: 'A/B A/B; A/B A/B', block: 8, count: 4 };
    const two = block(input);
    const eight = block({ ...input, method: 'eight' });
    const other = row(two, 'halvesOtherwise');
    expect(other.how).toBe(
      `eight at a time: ${eight.fabrics.map(({ fabric, need }) => `${fabric} ${need} in`).join(', ')}`,
    );
    expect(other.inches).toBe(eight.fabric);
    expect(row(eight, 'halvesOtherwise').inches).toBe(two.fabric);
    const geese = { chart: 'B A B 2x1 | B A B 2x1\nA 4x3\n-\n-', block: 8, count: 4 };
    const four = row(block(geese), 'geeseOtherwise').inches;
    expect(four).toBe(block({ chart: geese.chart, block: 8, count: 4, method: 'four' }).fabric);
    // Nothing differs where there are neither.
    const plain = block({ chart: 'A B; B A', block: 8 }).working.map(({ id }) => id);
    expect(plain.filter((id) => id.endsWith('Otherwise'))).toEqual([]);
  });

  test('reads a method in any order, with what is left out as usual', () => {
    for (const [method, code] of [
      [undefined, 'two-one'],
      ['eight', 'eight-one'],
      ['four', 'two-four'],
      ['Four, Eight', 'eight-four'],
      ['two one', 'two-one'],
    ])
      expect(row(block({ chart: 'A', block: 6, method }), 'method').code).toBe(code);
  });

  test('has a name, a week and a width for each fabric', () => {
    const made = block({ chart: 'A B', block: 8, name: 'Low Tide', week: 3, widths: { B: 20 }, count: 9 });
    expect(made.summary).toMatch(/^Low Tide: 9 blocks of 8 in\./);
    expect(made.week).toBe(3);
    // Geometry: strips of 4 1/2 × 8 1/2: 4 across 40 in, 2 across 20 in; 9 take 3 and 5 strips.
    expect(made.fabrics.map(({ width }) => width)).toEqual(['40', '20']);
  });
});

/** The codes of a message and of those inside it. */
const codesIn = ({ code, values }: Pick<Message, 'code' | 'values'>): string[] => [
  code,
  ...Object.values(values).flatMap((value: unknown) => (isMessage(value) ? codesIn(value) : [])),
];

/** What is wrong with an input: where, and the innermost code. */
const wrong = (input: object): [at: string, code: string | undefined][] =>
  calculator.reckon(input).issues.map((issue) => [issue.input, codesIn(issue).at(-1)]);

const CHARTS: [what: string, chart: unknown, code: string][] = [
  ['nothing', '', 'missing'],
  ['nothing at all', undefined, 'missing'],
  ['only marks', ' ; ;\n', 'emptyChart'],
  ['an empty table', [], 'emptyChart'],
  ['a table of empty rows', [[], []], 'emptyChart'],
  ['something that is no chart', { rows: 3 }, 'emptyChart'],
  ['an empty cell', 'A | | B', 'emptyCell'],
  ['an empty cell in a table', [[cell('A'), cell(' \n')]], 'emptyCell'],
  ['a cell of nothing', [['A', null]], 'emptyCell'],
  ['a word', 'A red; A A', 'notPatch'],
  ['letters without spaces', 'ABA; BAB', 'notPatch'],
  ['a sign', 'A ?; A A', 'notPatch'],
  ['markup', [['<img src=x onerror=alert(1)>']], 'notPatch'],
  ['a table in a cell', [[cell('<table>')]], 'notPatch'],
  ['three letters with strokes', 'A/B/C A; A A', 'notPatch'],
  ['five letters with strokes', 'A/B/C/D/E A; A A', 'notPatch'],
  ['a stroke without a letter', 'A/ | A; A | A', 'notPatch'],
  ['both strokes', 'A/B\\C A; A A', 'notPatch'],
  ['two letters side by side', [['A B']], 'notPatch'],
  ['a million digits', '7'.repeat(1_000_000), 'notPatch'],
  ['a row that is too short', 'A A A; A A; A A A', 'gap'],
  ['a row that is too long', 'A A; A A A; A A', 'gap'],
  ['a row of a table that is too short', [['A', 'A'], ['A']], 'gap'],
  ['a last row that only some columns reach', 'A 1x2 | A', 'gap'],
  ['a patch below the chart', [[cell('A', { rowspan: '2' }), 'B']], 'outside'],
  ['a rowspan of 65534', [[cell('A', { rowspan: '65534' })]], 'outside'],
  ['spans that overlap', [['A', cell('B', { rowspan: '2' })], [cell('C', { colspan: '2' })]], 'overlaps'],
  ['a colspan of 1000', [[cell('A', { colspan: '1000' })]], 'tooManyCells'],
  ['a colspan of 1000 in text', 'A 1000x1 | A', 'tooManyCells'],
  ['25 columns', 'A '.repeat(25), 'tooManyCells'],
  ['25 rows', 'A;'.repeat(25), 'tooManyCells'],
  ['5000 rows', Array<string[]>(5000).fill(['A']), 'tooManyCells'],
  ['100,000 cells in a row', 'A|'.repeat(100_000), 'tooManyCells'],
  [
    '31 fabrics',
    Array.from({ length: 4 }, (_, row) => Array.from({ length: 8 }, (_, at) => `A${row * 8 + at}`)),
    'tooManyFabrics',
  ],
  ['a colspan of 0', [[cell('A', { colspan: '0' })]], 'notSpan'],
  ['a colspan of 1.5', [[cell('A', { colspan: '1.5' })]], 'notSpan'],
  ['a colspan of −1', [[cell('A', { colspan: '-1' })]], 'notSpan'],
  ['a rowspan that is a word', [[cell('A', { rowspan: 'two' })]], 'notSpan'],
  ['a half-square pair that is not square', '| A/B 2x1 |; A | A', 'halfNotSquare'],
  ['a half-square pair in cells that are not square', 'A/B A', 'halfNotSquare'],
  ['quarter-square triangles that are not square', 'A/B/A/B 1x2 | A; A', 'quarterNotSquare'],
  ['a square in a square that is not square', 'A in B 2x1 | A', 'insideNotSquare'],
  ['a goose in one cell', '| B A B | A |; A | A', 'gooseNotTwoByOne'],
  ['a goose of 3 × 1 cells', '| B A B 3x1 |; A | A | A; A | A | A', 'gooseNotTwoByOne'],
  ['a size that may belong to one letter or to three', 'B A B 2x1; A A', 'marksNeeded'],
  ['a way to fly without marks', 'B A B down; A A A', 'marksNeeded'],
  [
    'a goose that flies nowhere',
    [[cell('B A B', { colspan: 2, goose: 'sideways' })], ['A', 'A']],
    'gooseWay',
  ],
  ['a wide goose that flies to the left', '| B A B 2x1 left |; A | A', 'gooseWay'],
  ['a tall goose that flies up', 'B A B 1x2 up | A; A', 'gooseWay'],
  ['a tall goose that does not say where it flies', 'B A B 1x2 | A; A', 'gooseWay'],
];

const OTHERS: [what: string, more: object, at: string, code: string][] = [
  ['no size', { block: '' }, 'block', 'missing'],
  ['a block of 0', { block: 0 }, 'block', 'noLength'],
  ['a block below 0', { block: '-12' }, 'block', 'negative'],
  ['a block that is a word', { block: 'large' }, 'block', 'notLength'],
  ['a block as large as a house', { block: '30 ft' }, 'block', 'tooLarge'],
  ['patches smaller than the ruler’s mark', { block: '1/5' }, 'block', 'patchTooSmall'],
  [
    'halves of patches smaller than the ruler’s mark',
    { chart: 'A in B A; A A', block: '3/8' },
    'block',
    'patchTooSmall',
  ],
  ['patches smaller than a coarse mark', { block: 1, mark: 1 }, 'block', 'patchTooSmall'],
  ['fewer blocks than none', { count: -1 }, 'count', 'outOfRange'],
  ['one and a half blocks', { count: 1.5 }, 'count', 'notWhole'],
  ['a million blocks', { count: 1e6 }, 'count', 'outOfRange'],
  ['some blocks', { count: 'some' }, 'count', 'notNumber'],
  ['a method that there is not', { method: 'three' }, 'method', 'notChoice'],
  ['a week that there is not', { week: 0 }, 'week', 'outOfRange'],
  [
    'more pieces than can be planned',
    { chart: Array(24).fill('A '.repeat(24)).join(';'), block: 24, count: 10_000 },
    'chart',
    'tooManyPieces',
  ],
  ['patches wider than the cloth', { block: 100 }, 'chart', 'largerThanCloth'],
  ['a fabric of a width that is none', { widths: { A: 'x' } }, 'fabricWidth', 'notLength'],
];

describe('no block at all', () => {
  test('takes nothing, with a price and several fabrics too', () => {
    const made = block({ chart: 'A B; B A', block: 12, name: 'Low Tide', count: 0, price: '12' });
    expect([made.cuts, made.fabrics, made.fabric, made.buy.inches]).toEqual([[], [], '0', '0']);
    expect(made.summary).toBe('Low Tide: 0 blocks of 12 in.');
    expect(made.cost?.amount).toBe('0.00');
  });
});

describe('a chart that cannot be cut', () => {
  test.each(CHARTS)('with %s, gets a sentence in its row', (_, chart, code) => {
    expect(wrong({ chart, block: 12 })).toEqual([['chart', code]]);
    const { errors } = reckonBlock({ chart, block: 12 });
    expect(errors?.[0]?.message).toMatch(/^[A-Z“].{15,220}\.$/s);
  });

  test.each(OTHERS)('with %s, is refused where that stands', (_, more, at, code) => {
    expect(wrong({ chart: 'A B; B A', block: 12, ...more })).toEqual([[at, code]]);
  });

  test('names the row and the patch', () =>
    expect(reckonBlock({ chart: 'A B; A ?', block: 12 }).errors).toEqual([
      {
        input: 'chart',
        message: 'Row 2, patch 2: “?” is not a patch. Write it like A, or A/B, A\\B, A/B/C/D, B A B, B in A.',
      },
    ]));
});

describe('rows from strips', () => {
  const NINE = { chart: 'A B A; B A B; A B A', block: '12', count: '20', fabricWidth: '40' };
  const otherwise = (input: object): string | undefined =>
    block(input).working.find(({ id }) => id === 'rowsOtherwise')?.how;

  test('twenty nine-patches: 8 segments a set, A 13 strips and 58 1/2 in, B 11 and 49 1/2 in', () => {
    // Worked by hand: u = 4, F = 40: ⌊40 ÷ 4 1/2⌋ = 8. ABA 40 segments in 5 sets, BAB 20 in 3: A 2 × 5 + 3, B 5 + 2 × 3, of 4 1/2 in each.
    const { cuts, fabrics } = block({ ...NINE, method: 'strips' });
    expect(cuts.map(({ count, width, length }) => `${count} of ${width} × ${length}`)).toEqual([
      '13 of 40 × 4 1/2',
      '11 of 40 × 4 1/2',
    ]);
    expect(fabrics.map(({ fabric, need }) => [fabric, need])).toEqual([
      ['A', '58 1/2'],
      ['B', '49 1/2'],
    ]);
  });

  test('and patch by patch, each says what the other way takes', () => {
    // 100 squares of A in 13 strips of 8, 80 of B in 10, each 4 1/2 in: 58 1/2 and 45.
    expect(otherwise(NINE)).toBe('from strips, sewn and cut across: A 58 1/2 in, B 49 1/2 in');
    expect(otherwise({ ...NINE, method: 'strips' })).toBe('patch by patch: A 58 1/2 in, B 45 in');
  });

  test('a row that is turned round is the same, and equal rectangles do as well as squares', () => {
    // Four rows of 6 × 3 in patches, two to a row; ten blocks: 40 segments of 3 1/2 in, 11 a set, 4 sets of strips 6 1/2 in wide.
    const { cuts } = block({ ...NINE, chart: 'A|B; B|A; A|B; B|A', count: '10', method: 'strips' });
    expect(cuts.map(({ count, length }) => `${count} of ${length}`)).toEqual(['4 of 6 1/2', '4 of 6 1/2']);
  });

  test('where rows are not of equal patches, the block is made patch by patch, and says so', () => {
    const chart = 'A/B B; B A';
    const { cuts, notes } = block({ ...NINE, chart, method: 'strips' });
    expect(notes.join(' ')).toMatch(/not made of rows of equal patches/);
    expect(cuts).toEqual(block({ ...NINE, chart }).cuts);
    expect(otherwise({ ...NINE, chart: 'A A; A A' })).toBeUndefined();
  });
});
