import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { block as calculator } from '../../src/calculators/block/block.js';
import type { BlockAnswer } from '../../src/calculators/block/shape.js';
import type { Caption } from '../../src/ledger/picture.js';
import { isExact } from '../../src/measure/exact.js';

type Point = [x: number, y: number];

/** A piece of cloth as it is drawn: its letter and its corners. */
interface Piece {
  letter: string;
  corners: Point[];
}

const answerOf = (input: object): BlockAnswer => {
  const { own, issues } = calculator.reckon(input);
  return own ?? expect.fail(issues.map(({ code, values }) => `${code} ${JSON.stringify(values)}`).join());
};

const letterOf = (label: Caption | undefined): string =>
  label && !isExact(label) && 'letter' in label.values ? String(label.values.letter) : '?';

/** Every piece of the block in its picture. */
const piecesOf = (answer: BlockAnswer): Piece[] => {
  const [picture] = calculator.draw(answer);
  const { boxes = [], shapes = [] } = picture ?? {};
  return [
    ...boxes.map(({ x, y, width, height, label }) => ({
      letter: letterOf(label),
      corners: [
        [x, y],
        [x + width, y],
        [x + width, y + height],
        [x, y + height],
      ] satisfies Point[],
    })),
    ...shapes.map(({ points, words }) => ({ letter: letterOf(words?.label), corners: points })),
  ];
};

const sides = (corners: Point[]): [Point, Point][] =>
  corners.map((corner, at) => [corner, corners[(at + 1) % corners.length] ?? corner]);

/** Half the sum of the cross products of its corners. */
const areaOf = ({ corners }: Piece): number =>
  Math.abs(sides(corners).reduce((sum, [[x1, y1], [x2, y2]]) => sum + x1 * y2 - x2 * y1, 0)) / 2;

/** A ray to the right leaves it through an odd number of sides. */
const holds = ({ corners }: Piece, [x, y]: Point): boolean =>
  sides(corners).filter(
    ([[x1, y1], [x2, y2]]) => y1 > y !== y2 > y && x < x1 + ((y - y1) / (y2 - y1)) * (x2 - x1),
  ).length %
    2 ===
  1;

/** Points all over a block, on no seam: no patch has a seam through such odd parts of a cell. */
const pointsIn = (side: number, columns: number, rows: number): Point[] => {
  const along = (cells: number): number[] =>
    Array.from({ length: cells * 5 }, (_, at) => ((at + 0.31) * side) / (cells * 5));
  const down = along(rows).map((y) => y + side / (rows * 37));
  return along(columns).flatMap((x) => down.map((y): Point => [x, y]));
};

/** The pieces cover the block, none of it twice, and each fabric as much as was reckoned. */
const isCovered = (answer: BlockAnswer): void => {
  const pieces = piecesOf(answer);
  const side = answer.block.valueOf();
  for (const point of pointsIn(side, answer.columns, answer.rows))
    expect(pieces.filter((piece) => holds(piece, point)).length, `at ${point.join()}`).toBe(1);
  const inBlock = ([x, y]: Point): boolean => Math.min(x, y) >= -1e-9 && Math.max(x, y) <= side + 1e-9;
  expect(pieces.every(({ corners }) => corners.every(inBlock))).toBe(true);
  const area = (some: Piece[]): number => some.reduce((all, piece) => all + areaOf(piece), 0);
  expect(area(pieces)).toBeCloseTo(side * side, 6);
  expect(answer.letters.map(({ fabric }) => fabric).sort()).toEqual(
    [...new Set(pieces.map(({ letter }) => letter))].sort(),
  );
  for (const letter of answer.letters) {
    const own = pieces.filter((piece) => piece.letter === letter.fabric);
    expect(own.length).toBe(letter.pieces);
    expect(area(own)).toBeCloseTo(letter.area.valueOf(), 6);
  }
  expect(pieces.length).toBe(answer.patches);
};

/** What is cut of each fabric is more than what it covers in all blocks. */
const isEnough = ({ fabrics, letters, count }: BlockAnswer): void => {
  for (const { fabric, area } of letters) {
    const plan = fabrics.find((plan) => plan.fabric === fabric);
    const cut = (plan?.pieces ?? []).reduce(
      (all, { count, width, length }) => all + count * width.valueOf() * length.valueOf(),
      0,
    );
    expect(cut).toBeGreaterThan(area.valueOf() * count);
    expect((plan?.need.valueOf() ?? 0) * (plan?.width.valueOf() ?? 0)).toBeGreaterThanOrEqual(cut);
  }
};

const FIXED: [what: string, chart: unknown][] = [
  ['one patch', 'A'],
  ['nine patches', 'A B A; B A B; A B A'],
  ['half-square triangles both ways', 'A/B B\\A; B\\A A/B'],
  ['quarter-square triangles', 'A/B/C/D A; B A/B/A/B'],
  ['a square in a square', 'A in B'],
  [
    'geese that fly four ways',
    'A | B C B 2x1 | A\nB C D 1x2 left | A/B 2x2 | B C D 1x2 right\n-\nA | B C B 2x1 down | A',
  ],
  ['cells that are not square', 'A B C; B C A'],
  ['triangles over several cells that are not square', 'A/B 2x1 | B in A 2x1\nC | A/B/C/D 2x1 | D'],
  ['a goose over 4 × 2 cells', 'B A B 4x2\n-\nC | C | C | C\nC | C | C | C'],
  [
    'a table with spans',
    [[{ text: 'A', rowspan: 2 }, 'B', { text: 'C', rowspan: '3' }], ['B'], [{ text: 'D', colspan: '2' }]],
  ],
  [
    '24 × 24 cells',
    Array.from({ length: 24 }, (_, row) => Array.from({ length: 24 }, (_, at) => 'ABC'[(row * at) % 3])),
  ],
];

const LETTERS = ['A', 'B', 'C', 'D', 'E'];

/** The texts for a patch of so many cells, in a chart of so many; the first fits any. */
const textsFor = (across: number, down: number, columns: number, rows: number, at: number[]): string[] => {
  const [a = '', b = '', c = '', d = ''] = at.map((which) => LETTERS[which % LETTERS.length]);
  const ratio = (across * rows) / (down * columns);
  if (ratio === 1) return [a, `${a}/${b}`, `${a}\\${b}`, `${a}/${b}/${c}/${d}`, `${a} in ${b}`];
  if (ratio === 2) return [a, `${a} ${b} ${c}`, `${a} ${b} ${a} down`];
  return ratio === 0.5 ? [a, `${a} ${b} ${c} left`, `${a} ${b} ${c} right`] : [a];
};

/** A chart at random: patches as large as there is room for, in the order of a table's cells. */
const randomChart = fc
  .record({
    columns: fc.integer({ min: 1, max: 8 }),
    rows: fc.integer({ min: 1, max: 8 }),
    picks: fc.array(fc.nat(10_000), { minLength: 600, maxLength: 600 }),
  })
  .map(({ columns, rows, picks }) => {
    let at = 0;
    const pick = (below: number): number => (picks[(at += 1)] ?? 0) % below;
    const taken = Array.from({ length: rows }, () => Array<boolean>(columns).fill(false));
    return taken.map((cells, row) => {
      const written: { text: string; colspan: number; rowspan: number }[] = [];
      for (let column = 0; column < columns; column += 1) {
        if (cells[column]) continue;
        const free = cells.slice(column).findIndex(Boolean);
        const across = 1 + pick(Math.min(4, free < 0 ? columns - column : free));
        const down = 1 + pick(Math.min(4, rows - row));
        for (const below of taken.slice(row, row + down)) below.fill(true, column, column + across);
        const texts = textsFor(across, down, columns, rows, [pick(5), pick(5), pick(5), pick(5)]);
        written.push({ text: texts[pick(texts.length)] ?? '', colspan: across, rowspan: down });
      }
      return written;
    });
  });

describe('the pieces in a block’s picture cover it, and no part twice', () => {
  test.each(FIXED)('%s', (_, chart) => {
    const answer = answerOf({ chart, block: 12, count: 3 });
    isCovered(answer);
    isEnough(answer);
  });

  test('200 charts at random', () => {
    const kinds = new Set<string>();
    fc.assert(
      fc.property(
        randomChart,
        fc.constantFrom(12, '7 3/8', '30 cm'),
        fc.constantFrom('two', 'eight', 'four', 'eight four'),
        (chart, block, method) => {
          const answer = answerOf({ chart, block, method, count: 2 });
          answer.used.chart.patches.forEach(({ kind }) => kinds.add(kind));
          isCovered(answer);
          isEnough(answer);
        },
      ),
      { numRuns: 200, seed: 20_261_130 },
    );
    expect([...kinds].sort()).toEqual(['goose', 'half', 'inside', 'plain', 'quarter']);
  });
});

describe('a letter lies where its chart has it', () => {
  /** The letter at a point of the block, each way from 0 to 1. */
  const at = (chart: string, ...points: Point[]): string =>
    points
      .map(([x, y]) => piecesOf(answerOf({ chart, block: 1 })).find((piece) => holds(piece, [x, y]))?.letter)
      .join(' ');
  const top: Point = [0.52, 0.1];
  const right: Point = [0.9, 0.51];
  const bottom: Point = [0.53, 0.9];
  const left: Point = [0.1, 0.54];

  // By the notation: the seam runs like the stroke, and the first letter is on its left.
  test('beside a seam that rises, and one that falls', () => {
    expect(at('A/B', top, left, right, bottom)).toBe('A A B B');
    expect(at('A\\B', left, bottom, top, right)).toBe('A A B B');
  });

  test('clockwise from the top', () => expect(at('A/B/C/D', top, right, bottom, left)).toBe('A B C D'));

  test('in the middle, and in every corner', () => {
    const corners: Point[] = [
      [0.1, 0.12],
      [0.9, 0.12],
      [0.9, 0.88],
      [0.1, 0.88],
    ];
    expect(at('A in B', [0.5, 0.51], top, right, bottom, left)).toBe('A A A A A');
    expect(at('A in B', ...corners)).toBe('B B B B');
  });

  // A goose's point is where it flies to, and its longest side is behind it.
  test('on both sides of a goose, whichever way it flies', () => {
    const up = 'B A C 2x1\nD | D';
    expect(at(up, [0.05, 0.1], [0.5, 0.26], [0.95, 0.1], [0.05, 0.48], [0.95, 0.48])).toBe('B A C A A');
    const down = 'B A C 2x1 down\nD | D';
    expect(at(down, [0.05, 0.4], [0.5, 0.26], [0.95, 0.4], [0.05, 0.02], [0.95, 0.02])).toBe('B A C A A');
    const toLeft = 'B A C 1x2 left | D\nD';
    expect(at(toLeft, [0.1, 0.05], [0.26, 0.5], [0.1, 0.95], [0.48, 0.05], [0.48, 0.95])).toBe('B A C A A');
    const toRight = 'B A C 1x2 right | D\nD';
    expect(at(toRight, [0.4, 0.05], [0.26, 0.5], [0.4, 0.95], [0.02, 0.05], [0.02, 0.95])).toBe('B A C A A');
  });
});
