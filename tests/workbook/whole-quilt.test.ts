import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { binding as bindingCalculator } from '../../src/calculators/binding/binding.js';
import { block as blockCalculator } from '../../src/calculators/block/block.js';
import { borders as bordersCalculator } from '../../src/calculators/borders/borders.js';
import { reckon as reckonTop } from '../../src/calculators/top/reckon.js';
import type { Reckoning } from '../../src/ledger/ledger.js';
import type { Picture, Shape } from '../../src/ledger/picture.js';
import { wholeQuilt, type BlockKind, type QuiltParts } from '../../src/workbook/whole-quilt.js';
import { t } from './telling.js';

type Point = [x: number, y: number];

const good = <A>({ own, issues }: { own: A | undefined } & Pick<Reckoning, 'issues'>): A =>
  own ?? expect.fail(issues.map(({ code }) => code).join());
// The cloth of a top is of no matter here, so it is not planned.
const topOf = (input: object) => good(reckonTop(input, () => 0));
const blockOf = (chart: string, count: number) => good(blockCalculator.reckon({ chart, block: 12, count }));

const letterOf = ({ fabric, is }: Shape): string => fabric ?? is;
const pieces = ({ shapes = [] }: Picture): Shape[] => shapes;

/** Half the sum of the cross products of its corners. */
const areaOf = ({ points }: Shape): number =>
  Math.abs(
    points.reduce((sum, [x, y], at) => {
      const [right, low] = points[(at + 1) % points.length] ?? [0, 0];
      return sum + x * low - right * y;
    }, 0),
  ) / 2;

const areas = (picture: Picture): Record<string, number> => {
  const all: Record<string, number> = {};
  for (const piece of pieces(picture)) all[letterOf(piece)] = (all[letterOf(piece)] ?? 0) + areaOf(piece);
  return all;
};

/** A ray to the right leaves it through an odd number of sides. */
const holds = ({ points }: Shape, [x, y]: Point): boolean =>
  points.filter(([x1, y1], at) => {
    const [x2, y2] = points[(at + 1) % points.length] ?? [0, 0];
    return y1 > y !== y2 > y && x < x1 + ((y - y1) / (y2 - y1)) * (x2 - x1);
  }).length %
    2 ===
  1;

const CHARTS = ['P Q; Q P', 'P/Q P Q\\P; Q P in Q P; P Q/P Q', 'P Q P 2x1\nP | Q', 'Q'];

const quilt = fc.record({
  across: fc.integer({ min: 1, max: 5 }),
  down: fc.integer({ min: 1, max: 5 }),
  block: fc.constantFrom(12, 9, '7 1/2'),
  sashing: fc.constantFrom(0, 2, '1 1/4'),
  cornerstones: fc.boolean(),
  frame: fc.boolean(),
  set: fc.constantFrom('straight', 'on-point'),
  borders: fc.constantFrom('', '2', '1 1/2, 4', '3, 1, 5'),
  corners: fc.constantFrom('sides-first', 'ends-first', 'squares', 'mitred', 'squares, mitred'),
  stripWidth: fc.constantFrom(undefined, '2 1/4', '3'),
  chart: fc.constantFrom(...CHARTS),
  other: fc.constantFrom(...CHARTS),
  share: fc.double({ min: 0, max: 1, noNaN: true }),
});
type Given = typeof quilt extends fc.Arbitrary<infer G> ? G : never;

/** The quilt of these numbers, and what each fabric covers in it as its parts reckon that. */
const made = (given: Given) => {
  const { stripWidth, borders: widths, corners, chart, other, share, ...laid } = given;
  const isSashed = laid.sashing !== 0;
  const cornerstones = laid.cornerstones || (isSashed && laid.set === 'on-point');
  const top = topOf({ ...laid, cornerstones });
  const { width, length } = top.finished;
  const borders = widths
    ? good(bordersCalculator.reckon({ width, length, borders: widths, corners }))
    : undefined;
  const size = borders?.finished ?? top.finished;
  const binding = good(bindingCalculator.reckon({ ...size, stripWidth }));
  const count = Math.round(top.blocks * share);
  const counts = [count, top.blocks - count];
  const answers = [chart, other].map((chart) =>
    good(blockCalculator.reckon({ chart, block: laid.block, count: 1 })),
  );
  const kinds = answers.map(({ used: { chart } }, at): BlockKind => {
    return { name: `block ${at}`, count: counts[at] ?? 0, chart };
  });
  const parts: QuiltParts = {
    // S sashing, C cornerstones, T triangles; without sashing the triangles come first.
    top: { answer: top, letters: isSashed ? (cornerstones ? ['S', 'C', 'T'] : ['S']) : ['T'] },
    blocks: kinds,
    borders: borders && { answer: borders, letters: ['1', '2', '3'] },
    binding: { answer: binding, letters: ['B'] },
  };
  const covered: Record<string, number> = {};
  const add = (letter: string, area: number): void => {
    if (area > 1e-9) covered[letter] = (covered[letter] ?? 0) + area;
  };
  answers.forEach(({ letters }, at) =>
    letters.forEach(({ fabric, area }) => add(fabric, area.valueOf() * (counts[at] ?? 0))),
  );
  // What is cut is 1/2 in larger each way than what it covers.
  const finished = (...sides: { valueOf(): number | string }[]): number =>
    sides.reduce<number>((all, side) => all * (Number(side.valueOf()) - 0.5), 1);
  for (const { used } of top.parts)
    for (const { count, width, length } of used.pieces)
      if (used.kind !== 'triangles')
        add(used.kind === 'sashing' ? 'S' : 'C', count * finished(width, length));
  if (laid.set === 'on-point') {
    const { block, sashing } = top.used.layout;
    const [b, s] = [block.valueOf(), sashing.valueOf()];
    // Geometry: the legs of a side triangle are a block and its sashing; a corner has the sashing at both ends of its long side.
    add('T', ((top.sideTriangles ?? 0) * (b + s) ** 2) / 2 + 4 * ((b + 2 * s) ** 2 / 4));
  }
  let [inner, level] = [width.valueOf(), length.valueOf()];
  borders?.borders.forEach(({ corners, pieces, finished: wide }, at) => {
    const [outer, high] = [inner + 2 * wide.valueOf(), level + 2 * wide.valueOf()];
    if (corners === 'mitred') add(`${at + 1}`, outer * high - inner * level);
    else for (const { count, width, length } of pieces) add(`${at + 1}`, count * finished(width, length));
    [inner, level] = [outer, high];
  });
  const edge = binding.used.edge.valueOf();
  add('B', (inner + 2 * edge) * (level + 2 * edge) - inner * level);
  return { parts, covered, size };
};

const drawn = (parts: QuiltParts): Picture => wholeQuilt(parts) ?? expect.fail('nothing is drawn');

describe('the picture of a whole quilt', () => {
  test('has of every fabric as much as its parts reckon, at random', () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(quilt, (given) => {
        const { parts, covered } = made(given);
        const found = areas(drawn(parts));
        expect(Object.keys(found).sort()).toEqual(Object.keys(covered).sort());
        for (const [letter, area] of Object.entries(covered)) {
          seen.add(letter);
          expect(Math.abs((found[letter] ?? 0) - area), letter).toBeLessThan(1e-4 * Math.max(1, area));
        }
      }),
      { numRuns: 150, seed: 20_261_130 },
    );
    expect([...seen].sort().join('')).toBe('123BCPQST');
  });

  test('covers all of it, and nothing twice, at random', () => {
    fc.assert(
      fc.property(
        quilt,
        fc.array(
          fc.tuple(
            fc.double({ min: 0.001, max: 0.999, noNaN: true }),
            fc.double({ min: 0.001, max: 0.999, noNaN: true }),
          ),
          { minLength: 30, maxLength: 30 },
        ),
        (given, shares) => {
          const picture = drawn(made(given).parts);
          for (const [x, y] of shares) {
            // On no seam: no seam has such odd parts of the picture.
            const point: Point = [
              (x * 0.9999 + 0.000031) * picture.width,
              (y * 0.9999 + 0.000047) * picture.height,
            ];
            expect(pieces(picture).filter((piece) => holds(piece, point)).length, point.join()).toBe(1);
          }
        },
      ),
      { numRuns: 40, seed: 20_261_130 },
    );
  });

  test('says what it shows, for someone who cannot see it', () => {
    const top = topOf({ block: 12, across: 2, down: 2 });
    const { used } = blockOf('A B; B A', 4);
    const { width, length } = top.finished;
    const borders = good(bordersCalculator.reckon({ width, length, borders: '2, 3' }));
    const binding = good(bindingCalculator.reckon({ width: 34, length: 34 }));
    const blocks = [
      { name: 'Harbour Star', count: 3, chart: used.chart },
      { name: '', count: 1, chart: undefined },
    ];
    const parts = {
      top: { answer: top, letters: [] },
      blocks,
      borders: { answer: borders, letters: ['C'] },
      binding: { answer: binding, letters: ['D'] },
    };
    // 24 + 2 × 5 in
    expect(t.say(drawn(parts).title)).toBe(
      'The whole quilt, 34 × 34 in: 3 Harbour Star, 1 block, 2 borders, binding.',
    );
    expect(t.say(drawn({ top: parts.top }).title)).toBe('The whole quilt, 24 × 24 in: 4 blocks.');
  });

  test('has what there is: blocks without a chart, empty places, borders round a top that is not there, or nothing', () => {
    const top = topOf({ block: 12, across: 2, down: 2 });
    const bare = { top: { answer: top, letters: [] } };
    expect(areas(drawn(bare))).toEqual({ piece: 576 });
    const one = { name: '', count: 1, chart: blockOf('A', 1).used.chart };
    const half = drawn({ ...bare, blocks: [one, { ...one, chart: undefined }] });
    expect(areas(half)).toEqual({ A: 144, piece: 144, spare: 288 });
    const borders = good(bordersCalculator.reckon({ width: 20, length: 30, borders: '2' }));
    const around = drawn({ borders: { answer: borders, letters: ['A'] } });
    // 24 × 34 less 20 × 30
    expect(areas(around)).toEqual({ A: 216, quilt: 600 });
    expect(wholeQuilt({})).toBe(undefined);
  });

  test('is drawn in the size that was measured', () => {
    const top = topOf({ block: 12, across: 2, down: 2, measured: { finishedWidth: '23' } });
    const one = { name: '', count: 4, chart: blockOf('A', 4).used.chart };
    const { width, length } = top.finished;
    const borders = good(bordersCalculator.reckon({ width, length, borders: '2' }));
    const picture = drawn({
      top: { answer: top, letters: [] },
      blocks: [one],
      borders: { answer: borders, letters: ['B'] },
    });
    expect([picture.width, picture.height]).toEqual([27, 28]);
    expect(areas(picture)['A']).toBeCloseTo(23 * 24, 6);
  });

  test('is a field where nobody could tell the blocks apart, and has plain blocks where they have too many pieces', () => {
    const many = topOf({ block: 2, across: 40, down: 40 });
    const kinds = (count: number, chart: string): BlockKind[] => [
      { name: '', count, chart: blockOf(chart, 1).used.chart },
    ];
    const field = drawn({ top: { answer: many, letters: [] }, blocks: kinds(1600, 'A') });
    expect(pieces(field)).toHaveLength(1);
    const fine = Array<string>(20).fill('A '.repeat(20)).join(';');
    const top = topOf({ block: 12, across: 10, down: 10 });
    const plain = drawn({ top: { answer: top, letters: [] }, blocks: kinds(100, fine) });
    expect(pieces(plain)).toHaveLength(100);
    expect(areas(plain)).toEqual({ piece: 14_400 });
  });
});
