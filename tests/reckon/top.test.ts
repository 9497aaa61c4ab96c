import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sentence } from '../sentences.js';
import { checkPlan } from '../../src/planner/check.js';
import { planCloth } from '../../src/planner/plan.js';
import { exact, sum, type Exact } from '../../src/measure/exact.js';
import type { Cut } from '../../src/reckon.js';
import { reckonTop, type TopInput, type TopResult } from '../../src/reckon.js';
import { answersOf, inches } from './asked.js';

const good = answersOf(reckonTop);

// Building. Every length is a whole number of eighths, which a plain number holds exactly.

/** A finished piece of the top: what it is, and its two sides in inches. */
interface Built {
  is: 'block' | 'sashing' | 'stone';
  wide: number;
  high: number;
}

/** A straight set, put together row by row and column by column. */
const buildStraight = (
  block: number,
  sashing: number,
  across: number,
  down: number,
  { frame, cornerstones }: { frame: boolean; cornerstones: boolean },
): { pieces: Built[]; width: number; length: number } => {
  /** Blocks and gaps along one side, in order. */
  const along = (count: number): ('block' | 'gap')[] => [
    ...(frame && sashing ? (['gap'] as const) : []),
    ...Array.from({ length: count }, (_, at) =>
      at && sashing ? (['gap', 'block'] as const) : (['block'] as const),
    ).flat(),
    ...(frame && sashing ? (['gap'] as const) : []),
  ];
  const sizeOf = { block, gap: sashing };
  const reach = (steps: ('block' | 'gap')[]): number => steps.reduce((all, step) => all + sizeOf[step], 0);
  const columns = along(across);
  const pieces = along(down).flatMap((row): Built[] =>
    row === 'gap' && !cornerstones
      ? [{ is: 'sashing', wide: reach(columns), high: sashing }]
      : columns.map((column) => ({
          is: row !== column ? 'sashing' : row === 'gap' ? 'stone' : 'block',
          wide: sizeOf[column],
          high: sizeOf[row],
        })),
  );
  return { pieces, width: reach(columns), length: reach(along(down)) };
};

/**
 * A set on point, turned by an eighth so that its blocks are cells of a plain lattice: the cells, and the edges and
 * corners of all of them, each counted once.
 */
const buildOnPoint = (across: number, down: number): { cells: number; edges: number; corners: number } => {
  const cells: [number, number][] = [];
  for (let row = 0; row < down; row += 1)
    for (let column = 0; column < across; column += 1) {
      cells.push([row + column, column - row]);
      // A block between four others.
      if (row + 1 < down && column + 1 < across) cells.push([row + column + 1, column - row]);
    }
  const edges = new Set<string>();
  const corners = new Set<string>();
  for (const [a, b] of cells)
    for (const one of [0, 1]) {
      edges.add(`along ${a} ${b + one}`).add(`beside ${a + one} ${b}`);
      corners.add(`${a + one} ${b}`).add(`${a + one} ${b + 1}`);
    }
  return { cells: cells.length, edges: edges.size, corners: corners.size };
};

/** Cut pieces by their size, shorter side first, without what they are called. */
const bySize = (cuts: { count: number; width: Exact; length: Exact }[]): Record<string, number> => {
  const counts: Record<string, number> = {};
  for (const { count, width, length } of cuts) {
    const size = [width, length]
      .sort((a, b) => a.compare(b))
      .map((side) => side.toFraction(true))
      .join(' × ');
    counts[size] = (counts[size] ?? 0) + count;
  }
  return counts;
};
const cutSizes = (cuts: Cut[]): Record<string, number> =>
  bySize(cuts.map(({ count, width, length }) => ({ count, width: exact(width), length: exact(length) })));
/** With a seam allowance of 1/4 in all round (common practice). */
const toCut = (built: Built[]): Record<string, number> =>
  bySize(
    built.map(({ wide, high }) => ({
      count: 1,
      width: exact(wide * 8 + 4, 8),
      length: exact(high * 8 + 4, 8),
    })),
  );

const straight = fc.record({
  block: fc.integer({ min: 8, max: 160 }).map((eighths) => eighths / 8),
  sashing: fc.oneof(
    fc.constant(0),
    fc.integer({ min: 2, max: 40 }).map((eighths) => eighths / 8),
  ),
  across: fc.integer({ min: 1, max: 9 }),
  down: fc.integer({ min: 1, max: 9 }),
  frame: fc.boolean(),
  cornerstones: fc.boolean(),
});

describe('a straight set', () => {
  test('is the size of its pieces when they are put together', () => {
    fc.assert(
      fc.property(straight, ({ block, sashing, across, down, frame, cornerstones }) => {
        const { pieces, width, length } = buildStraight(block, sashing, across, down, {
          frame,
          cornerstones,
        });
        const area = pieces.reduce((all, { wide, high }) => all + wide * high, 0);
        expect(area).toBe(width * length);
        const result = reckonTop({ block, sashing, across, down, frame, cornerstones, fabricWidth: 400 });
        if (result.errors) throw new Error(JSON.stringify(result.errors));
        expect([inches(result.finished.width), inches(result.finished.length)]).toEqual([width, length]);
        expect([inches(result.unfinished.width), inches(result.unfinished.length)]).toEqual([
          width + 0.5,
          length + 0.5,
        ]);
        expect(result.blocks).toBe(pieces.filter(({ is }) => is === 'block').length);
        expect(cutSizes(result.pieces)).toEqual(toCut(pieces.filter(({ is }) => is !== 'block')));
        const stones = result.parts.find(({ part }) => part === 'cornerstones')?.cuts ?? [];
        expect(stones.reduce((all, { count }) => all + count, 0)).toBe(
          pieces.filter(({ is }) => is === 'stone').length,
        );
      }),
      { numRuns: 200 },
    );
  });

  test('of 4 × 5 blocks of 12 in, framed by 2 in sashing with cornerstones, is 58 × 72 in', () => {
    // geometry: 4 × 12 + 5 × 2 and 5 × 12 + 6 × 2; 5 × 5 + 6 × 4 = 49 sashing pieces; 5 × 6 cornerstones
    const result = good({ block: 12, across: 4, down: 5, sashing: 2, cornerstones: true, frame: true });
    expect(result.finished).toEqual({ width: '58', length: '72' });
    expect(cutSizes(result.pieces)).toEqual({ '2 1/2 × 12 1/2': 49, '2 1/2 × 2 1/2': 30 });
    expect(result.working.find(({ id }) => id === 'fabric')!.how).toBe(
      'strips across the cloth: 18 × 2 1/2 = 45 in',
    );
  });

  test('of one block says so', () => {
    expect(good({ block: 12, across: 1, down: 1 }).summary).toMatch(/^1 block of 12 in, 1 by 1:/);
  });

  test('without sashing there is nothing to cut but the blocks', () => {
    const result = good({ block: 12, across: 4, down: 5, frame: true, cornerstones: true });
    expect(result).toMatchObject({
      finished: { width: '48', length: '60' },
      pieces: [],
      parts: [],
      fabric: '0',
    });
  });

  test('a row of sashing follows the width that was measured', () => {
    const input = { block: 12, across: 3, down: 3, sashing: 2, measured: { finishedWidth: '40 1/4' } };
    const result = good({ ...input, fabricWidth: 42 });
    expect(result.finished).toEqual({ width: '40 1/4', length: '40' });
    // 40 1/4 + 2 × 1/4
    expect(cutSizes(result.pieces)).toMatchObject({ '2 1/2 × 40 3/4': 2 });
  });
});

const onPoint = fc.record({
  block: fc.integer({ min: 24, max: 160 }).map((eighths) => eighths / 8),
  sashing: fc.oneof(
    fc.constant(0),
    fc.integer({ min: 2, max: 32 }).map((eighths) => eighths / 8),
  ),
  across: fc.integer({ min: 1, max: 8 }),
  down: fc.integer({ min: 1, max: 8 }),
});

describe('a set on point', () => {
  const reckon = (input: TopInput): TopResult =>
    good({ ...input, set: 'on-point', cornerstones: true, fabricWidth: 400 });

  test('has the blocks, sashing pieces and cornerstones that are counted on its lattice', () => {
    fc.assert(
      fc.property(onPoint, ({ block, sashing, across, down }) => {
        const { cells, edges, corners } = buildOnPoint(across, down);
        const result = reckon({ block, sashing, across, down });
        expect(result.blocks).toBe(cells);
        const counted = (part: string): number =>
          result.parts.find((one) => one.part === part)?.cuts.reduce((all, { count }) => all + count, 0) ?? 0;
        expect([counted('sashing'), counted('cornerstones')]).toEqual(sashing ? [edges, corners] : [0, 0]);
        if (sashing)
          expect(cutSizes(result.parts.slice(0, 2).flatMap(({ cuts }) => cuts))).toEqual(
            bySize([
              {
                count: edges,
                width: exact(sashing).add(exact('1/2')),
                length: exact(block).add(exact('1/2')),
              },
              {
                count: corners,
                width: exact(sashing).add(exact('1/2')),
                length: exact(sashing).add(exact('1/2')),
              },
            ]),
          );
      }),
    );
  });

  test('its pieces and triangles have the area of the finished rectangle', () => {
    fc.assert(
      fc.property(onPoint, ({ block, sashing, across, down }) => {
        const { cells, edges, corners } = buildOnPoint(across, down);
        const result = reckon({ block, sashing, across, down });
        const pitch = block + sashing;
        // Between two tips at the edge fits a triangle whose legs are a block and a sashing; at a corner of the top, one
        // whose long side is a block between two sashings. Half of leg × leg; a quarter of long side × long side.
        const side = (pitch * pitch) / 2;
        const corner = (block + 2 * sashing) ** 2 / 4;
        const area =
          cells * block ** 2 +
          (sashing ? edges * block * sashing + corners * sashing ** 2 : 0) +
          result.sideTriangles! * side +
          4 * corner;
        const { width, length } = result.finished;
        // √2 is rounded up to 1/1,000,000 in on either side
        const most = area + (inches(width) + inches(length)) / 1_000_000 + 1e-9;
        expect(inches(width) * inches(length)).toBeGreaterThanOrEqual(area - 1e-9);
        expect(inches(width) * inches(length)).toBeLessThanOrEqual(most);
      }),
    );
  });

  test('a square for triangles is as large as the finished triangle with its seams, and not one mark larger', () => {
    fc.assert(
      fc.property(onPoint, ({ block, sashing, across, down }) => {
        const { sideSquare, cornerSquare } = reckon({ block, sashing, across, down });
        // A side triangle's long side + 1 1/4; a corner triangle's leg + 7/8 (“Setting triangles” chart,
        // lukas.is-a-geek.org/tani/chart.htm)
        const side = (block + sashing) * Math.SQRT2 + 1.25;
        const corner = (block + 2 * sashing) / Math.SQRT2 + 0.875;
        for (const [cut, wanted] of [
          [sideSquare, side],
          [cornerSquare, corner],
        ] as const) {
          // nobody can cut 1/128 in
          expect(inches(cut!)).toBeGreaterThan(wanted - 1 / 128);
          expect(inches(cut!)).toBeLessThan(wanted + 1 / 8 + 1 / 128);
        }
      }),
    );
  });

  /** √ of a whole number over another, in units of 1/10^30, rounded down: whole-number arithmetic alone. */
  const FINE = 10n ** 30n;
  const rootOf = (top: bigint, bottom: bigint): bigint => {
    const square = (top * FINE * FINE) / bottom;
    let root = 0n;
    for (let bit = 1n << 140n; bit; bit >>= 1n) if ((root + bit) ** 2n <= square) root += bit;
    return root;
  };

  /** The mark that such a size is cut on, in eighths: the next above it, or the one that it passes by less than 1/128 in. */
  const eighthsOf = (size: bigint): bigint => {
    const below = (size * 8n) / FINE;
    return (size - (below * FINE) / 8n) * 128n < FINE ? below : below + 1n;
  };

  test.each([
    // By hand: 6.375 ÷ √2 = 4.5078057…, and 7/8 more is 5.3828057…; that is 0.0078057… above 5 3/8, and 1/128 is 0.0078125.
    ['6 3/8', '5 3/8'],
    // Its neighbours, in the same way: 6.25 ÷ √2 + 7/8 = 5.2944… and 6.5 ÷ √2 + 7/8 = 5.4711…
    ['6 1/4', '5 3/8'],
    ['6 1/2', '5 1/2'],
  ])('a %s in block has corner triangles from a square of %s in', (block, corner) =>
    expect(reckonTop({ block, across: 2, down: 2, set: 'on-point' })).toMatchObject({ cornerSquare: corner }),
  );

  test('every block up to 40 in has the squares that √2 to thirty places gives', () => {
    const wrong: string[] = [];
    for (let eighths = 1n; eighths <= 320n; eighths += 1n) {
      // (block × √2)² = 2 block² and (block ÷ √2)² = block² ÷ 2, with the block in eighths
      const side = eighthsOf(rootOf(2n * eighths ** 2n, 64n) + (FINE * 5n) / 4n);
      const corner = eighthsOf(rootOf(eighths ** 2n, 128n) + (FINE * 7n) / 8n);
      const { sideSquare, cornerSquare } = good({
        block: `${eighths}/8`,
        across: 1,
        down: 1,
        set: 'on-point',
        fabricWidth: 100,
      });
      for (const [cut, wanted] of [
        [sideSquare!, side],
        [cornerSquare!, corner],
      ] as const)
        if (!exact(cut).equals(exact(wanted, 8))) wrong.push(`${eighths}/8: ${cut}, not ${wanted}/8`);
    }
    expect(wrong).toEqual([]);
  });

  test('squares enough for every triangle', () => {
    fc.assert(
      fc.property(onPoint, (input) => {
        const result = reckon(input);
        const squares = result.parts.at(-1)!.cuts.map(({ count }) => count);
        const [sides, corners] = squares.length === 2 ? squares : [0, squares[0]];
        // tips at the edge, less one, on each of the four sides
        const gaps = 2 * (input.across - 1) + 2 * (input.down - 1);
        expect(result.sideTriangles).toBe(gaps);
        expect(sides * 4).toBeGreaterThanOrEqual(gaps);
        expect(sides * 4).toBeLessThan(gaps + 4);
        expect(corners! * 2).toBe(4);
      }),
    );
  });

  test('says that its sashing runs on the outside too, where that was not asked for', () => {
    const notes = (frame: boolean): string =>
      good({
        block: 12,
        across: 3,
        down: 3,
        set: 'on-point',
        sashing: 2,
        cornerstones: true,
        frame,
      }).notes.join();
    expect(notes(false)).toContain('on the outside too');
    expect(notes(true)).not.toContain('on the outside too');
  });

  test('with sashing but without cornerstones is refused in a sentence', () => {
    const result = reckonTop({ block: 12, across: 3, down: 3, set: 'on-point', sashing: 2 });
    expect(result.errors).toMatchObject([{ input: 'cornerstones' }]);
  });
});

describe('cloth', () => {
  const inputs = fc.record({
    block: fc.integer({ min: 24, max: 120 }).map((eighths) => `${eighths}/8`),
    sashing: fc.integer({ min: 2, max: 40 }).map((eighths) => `${eighths}/8`),
    across: fc.integer({ min: 1, max: 6 }),
    down: fc.integer({ min: 1, max: 6 }),
    set: fc.constantFrom('straight', 'on-point'),
    cornerstones: fc.boolean(),
    frame: fc.boolean(),
    fabricWidth: fc.integer({ min: 24, max: 108 }),
    shrinkage: fc.constantFrom(0, 0, 3),
    increment: fc.constantFrom('1/8 yd', 'thirds', '10 cm'),
  });

  test('is enough for every piece: a checked plan places all of them on the bought cloth after the wash', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const result = reckonTop(input);
        if (result.errors) {
          expect(result.errors[0]!.input).toMatch(/^(cornerstones|block|sashing)$/);
          return;
        }
        const kept = exact(100 - input.shrinkage, 100);
        const cloth = { width: exact(input.fabricWidth).mul(kept) };
        const lies = (cuts: Cut[], bought: Exact): void => {
          const pieces = cuts.map(({ count, width, length }) => ({
            count,
            width: exact(length),
            height: exact(width),
            turn: true,
          }));
          const plan = planCloth(pieces, cloth);
          if (!plan.ok) throw new Error(sentence(plan.problem));
          expect(checkPlan(pieces, cloth, plan)).toEqual([]);
          expect(plan.length.lte(bought.mul(kept))).toBe(true);
          const area = sum(pieces.map(({ width, height, count }) => width.mul(height).mul(count)));
          expect(area.lte(cloth.width.mul(bought).mul(kept))).toBe(true);
        };
        for (const { cuts, fabric, buy } of result.parts) {
          lies(cuts, exact(fabric));
          expect(exact(buy.inches).gte(exact(fabric))).toBe(true);
        }
        if (result.pieces.length) lies(result.pieces, exact(result.fabric));
        expect(exact(result.fabric).add(exact(result.spare)).equals(exact(result.buy.inches))).toBe(true);
        const apart = sum(result.parts.map(({ fabric }) => exact(fabric)));
        expect(exact(result.fabric).lte(apart)).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  test('is the sum of the listed strips, and they give every piece', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const result = reckonTop(input);
        if (result.errors) return;
        const kept = exact(100 - input.shrinkage, 100);
        for (const { cuts, strips, fabric } of [...result.parts, { ...result, cuts: result.pieces }]) {
          const length = sum(strips.map(({ count, height }) => exact(height).mul(count)));
          expect(length.equals(exact(fabric).mul(kept))).toBe(true);
          for (const { piece, count } of cuts) {
            const given = strips.flatMap(({ count, gives }) =>
              gives.filter((give) => give.piece === piece).map((give) => give.count * count),
            );
            expect(given.reduce((all, some) => all + some, 0)).toBe(count);
          }
        }
      }),
      { numRuns: 40 },
    );
  });
});

describe('bad input', () => {
  const KEYS = [
    'block',
    'across',
    'down',
    'set',
    'sashing',
    'cornerstones',
    'frame',
    'fabricWidth',
    'seam',
    'mark',
    'shrinkage',
    'increment',
    'price',
    'currency',
    'units',
    'lang',
    'measured',
  ];

  test('of every kind gives a sentence, and never throws', () => {
    const written = fc.oneof(
      fc.anything(),
      fc.string(),
      fc.constantFrom('0', '-1', '1/0', '1e9', 'NaN', '12', '3', '200', '1/64'),
      fc.double(),
    );
    fc.assert(
      fc.property(fc.dictionary(fc.constantFrom(...KEYS), written), (junk) => {
        const result = reckonTop({ block: '12', across: '3', down: '3', ...junk });
        if (result.errors) {
          expect(result.buy).toBeUndefined();
          for (const { message } of result.errors) expect(message).toMatch(/^[A-Z“].*[.?]$/su);
        } else
          expect(
            JSON.stringify({ ...result, working: result.working.filter(({ role }) => role !== 'given') }),
          ).not.toMatch(/NaN|Infinity|undefined/);
      }),
      { numRuns: 500 },
    );
  });

  test('says what is missing, with an example that works', () => {
    const { errors } = reckonTop();
    expect(errors?.map(({ input }) => input)).toEqual(['block', 'across', 'down']);
    for (const { message } of errors!) expect(message).toMatch(/ is missing\. Write it like /);
  });
});

test('setting triangles leave room for any seam allowance', () => {
  // Geometry: a triangle with allowance S all round, cut four from a square: the square's side is the finished long side plus
  // 2 S (1 + √2); cut two: the finished short side plus S (2 + √2).
  for (const seam of [0.25, 0.375, 0.5, 1]) {
    const result = reckonTop({ block: 8, across: 3, down: 5, set: 'on-point', seam });
    if (result.errors) throw new Error(JSON.stringify(result.errors));
    expect(exact(result.sideSquare!).valueOf()).toBeGreaterThanOrEqual(
      8 * Math.SQRT2 + 2 * seam * (1 + Math.SQRT2),
    );
    expect(exact(result.cornerSquare!).valueOf()).toBeGreaterThanOrEqual(
      8 / Math.SQRT2 + seam * (2 + Math.SQRT2),
    );
  }
});

test('all from one cloth never takes more than each kind of piece from its own', () => {
  // Geometry: pieces that fit on two lengths fit on one length that is as long as both.
  const { fabric, parts, strips } = good({
    block: '10 cm',
    across: 8,
    down: 11,
    sashing: '2 in',
    cornerstones: true,
    frame: true,
    fabricWidth: '99 cm',
    seam: '10 mm',
    shrinkage: '7.5',
  });
  const apart = parts.reduce((all, part) => all + inches(part.fabric), 0);
  expect(inches(fabric)).toBeLessThanOrEqual(apart + 1e-9);
  const given = strips.reduce(
    (all, strip) => all + strip.count * strip.gives.reduce((some, { count }) => some + count, 0),
    0,
  );
  expect(given).toBe(99 + 96 + 108);
});

test('a side on point is never said to be exact', () => {
  // Geometry: no multiple of √2 is a fraction, though 12 × 12 3/4 × √2 = 216.3747 rounds to 216 3/8.
  const { working } = good({ block: '12 3/4', across: 12, down: 5, set: 'on-point' });
  const how = working.find(({ id }) => id === 'finishedWidth')!.how;
  expect(how).toBe('12 × 12 3/4 × √2 ≈ 216 3/8 in');
});

describe('sashing longer than the cloth is wide', () => {
  const reckon = (more: TopInput = {}): TopResult =>
    good({ block: 12, across: 3, down: 4, sashing: 2, fabricWidth: 40, ...more });

  test('is joined from strips across the cloth where that takes less', () => {
    // Geometry: 3 × 12 + 2 × 2 = 40 in, cut 40 1/2. Along the cloth it takes 40 1/2 in. Joined, each of the three is a whole
    // width and 40 1/2 − (40 − 1/2) = 1 in; eight sashes of 12 1/2 in and the ends come from three more strips of 2 1/2 in.
    const result = reckon();
    expect(result.fabric).toBe('15');
    expect(result.parts.map(({ fabric }) => fabric)).toEqual(['15']);
    const row = (id: string) => result.working.find((one) => one.id === id)?.value;
    expect([row('sashingJoined'), row('sashingWhole')]).toEqual(['15 in', '40 1/2 in']);
    expect(result.notes.join()).toContain('If it were 1/2 in shorter, it would need no join');
  });

  test('is cut along the cloth where joined strips take more', () => {
    // Geometry: sixteen strips 2 1/2 in wide and 60 in long lie side by side in 40 in of cloth: 60 in. Joined, each is a whole
    // width and 60 − (40 − 1/2) = 20 1/2 in: sixteen strips are 40 in, and the ends lie side by side below: 60 1/2 in.
    const { fabric, pieces, working, notes } = reckon({ block: '59 1/2', across: 1, down: 17 });
    const value = (id: string) => working.find((one) => one.id === id)!.value;
    expect([value('sashingWhole'), value('sashingJoined')]).toEqual(['60 in', '60 1/2 in']);
    expect(fabric).toBe('60');
    expect(cutSizes(pieces)).toEqual({ '2 1/2 × 60': 16 });
    expect(notes.join()).not.toContain('shorter');
  });

  test('joined, its strips reach as far as the piece, and are no longer than the cloth', () => {
    const inputs = fc.record({
      block: fc.integer({ min: 32, max: 120 }).map((eighths) => `${eighths}/8`),
      sashing: fc.integer({ min: 4, max: 32 }).map((eighths) => `${eighths}/8`),
      across: fc.integer({ min: 2, max: 9 }),
      down: fc.integer({ min: 2, max: 9 }),
      frame: fc.boolean(),
      fabricWidth: fc.constantFrom('40', '41 3/8', '106 cm'),
      seam: fc.constantFrom('0', '1/4', '3/8'),
      shrinkage: fc.constantFrom(0, 3),
    });
    let joined = 0;
    fc.assert(
      fc.property(inputs, (input) => {
        const { pieces, unfinished, working } = good(input);
        const ends = pieces.filter(({ piece }) => piece.includes(': end part'));
        if (!ends.length) return;
        joined++;
        const cloth = exact(
          (input.fabricWidth.endsWith('cm') ? exact(106).div(exact('2.54')) : exact(input.fabricWidth)).mul(
            exact(100 - input.shrinkage, 100),
          ),
        );
        expect(working.some(({ id }) => id === 'sashingJoined')).toBe(true);
        const wholes = pieces.filter(({ piece }) => piece.includes(': part as wide as the cloth'));
        // Geometry: strips sewn end to end lose two seam allowances at each join.
        const loss = exact(input.seam).mul(2);
        const rows = input.down + (input.frame ? 1 : -1);
        const reach = (count: number, length: Exact): Exact => length.mul(count / rows);
        const all = [...wholes, ...ends].filter(({ piece }) => piece.startsWith('long sashing between rows'));
        const perRow = all.reduce((some, { count }) => some + count / rows, 0);
        const sewn = sum(all.map(({ count, length }) => reach(count, exact(length)))).sub(
          loss.mul(perRow - 1),
        );
        if (all.length) expect(sewn.gte(exact(unfinished.width))).toBe(true);
        for (const { length } of [...wholes, ...ends]) expect(exact(length).lte(cloth)).toBe(true);
      }),
      { numRuns: 60, seed: 3 },
    );
    expect(joined).toBeGreaterThan(10);
  });
});

test('setting triangles count with narrow sashing too, and the row says so', () => {
  // Geometry: (12 + 1) √2 = 18.385, (12 + 2) ÷ √2 = 9.899; quilters add 1 1/4 in and 7/8 in.
  const { working } = good({
    block: 12,
    across: 2,
    down: 2,
    sashing: 1,
    cornerstones: true,
    set: 'on-point',
  });
  const how = (row: string): string => working.find(({ id }) => id === row)!.how;
  expect(how('sideSquare')).toBe('(12 + 1) × √2 + 1 1/4, up to the mark');
  expect(how('cornerSquare')).toBe('(12 + 2 × 1) ÷ √2 + 7/8, up to the mark');
});
