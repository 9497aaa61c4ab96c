import { describe, expect, it } from 'vitest';
import { blockChoices, type BlockChoice } from '../../src/calculators/top/choices.js';
import { inches } from '../../src/ledger/quantity.js';
import { exact } from '../../src/measure/exact.js';
import { reckonTop } from '../../src/reckon.js';
import { answersOf } from './asked.js';

interface Case {
  width: number;
  length: number;
  border: number;
  block: number;
  sashing: number;
  frame: boolean;
  onPoint: boolean;
}

const choicesOf = ({ width, length, border, block, sashing, frame, onPoint }: Case): BlockChoice[] =>
  blockChoices(
    { width: exact(width), length: exact(length), border: exact(border) },
    { block: inches(exact(block)), sashing: inches(exact(sashing)), frame, onPoint },
  );

/** A side, worked here: blocks and the strips between them, which run round the outside too if they are framed or on point. */
const sideOf = (blocks: number, { block, sashing, frame, onPoint, border }: Case): number => {
  const strips = frame || onPoint ? blocks + 1 : blocks - 1;
  return (blocks * block + strips * sashing) * (onPoint ? Math.SQRT2 : 1) + 2 * border;
};

const MANY: Case[] = [];
for (const [width, length] of [
  [60, 80],
  [84, 92],
  [45.5, 58.25],
] as const)
  for (const border of [0, 5])
    for (const block of [6, 9.5, 12, 20])
      for (const sashing of [0, 1.5])
        for (const frame of [false, true])
          for (const onPoint of [false, true])
            MANY.push({ width, length, border, block, sashing, frame, onPoint });

const pairs = Array.from({ length: 40 }, (_, across) =>
  Array.from({ length: 40 }, (_, down) => [across + 1, down + 1] as const),
).flat();
const named = ({ across, down }: Pick<BlockChoice, 'across' | 'down'>): string => `${across} × ${down}`;
/** A root is rounded up, six places behind the point. */
const NEARLY = 5;

describe('of all numbers of blocks up to 40 × 40', () => {
  it('the first choice reaches the size with the least too much, and the fewest blocks', () => {
    for (const one of MANY) {
      const reaching = pairs
        .map(([across, down]) => ({
          across,
          down,
          over: [sideOf(across, one) - one.width, sideOf(down, one) - one.length],
        }))
        .filter(({ over }) => over.every((far) => far >= 0))
        .sort(
          (a, b) =>
            a.over[0]! + a.over[1]! - b.over[0]! - b.over[1]! || a.across * a.down - b.across * b.down,
        );
      expect(named(choicesOf(one)[0]!), JSON.stringify(one)).toBe(named(reaching[0]!));
    }
  });

  it('the others are one block fewer, one way or both, and come nearest of all that are too small there', () => {
    for (const one of MANY) {
      const [best, ...others] = choicesOf(one);
      const fewer = (blocks: number, wanted: number): number[] =>
        Math.abs(sideOf(blocks, one) - wanted) < 1e-9 || blocks === 1 ? [blocks] : [blocks, blocks - 1];
      const expected = fewer(best!.across, one.width).flatMap((across) =>
        fewer(best!.down, one.length).map((down) => named({ across, down })),
      );
      expect([best!, ...others].map(named).sort(), JSON.stringify(one)).toEqual(expected.sort());
      for (const { across, down, border } of others) {
        const tooSmall = pairs.filter(
          ([c, r]) =>
            sideOf(c, one) < one.width === border.side.gt(0) &&
            sideOf(r, one) < one.length === border.end.gt(0),
        );
        const off = ([c, r]: readonly [number, number]): number =>
          Math.abs(sideOf(c, one) - one.width) + Math.abs(sideOf(r, one) - one.length);
        expect(off([across, down])).toBeCloseTo(Math.min(...tooSmall.map(off)), NEARLY);
      }
    }
  });

  it('each says its size, how far it is off, the border that makes it exact, and how many blocks it has', () => {
    for (const one of MANY)
      for (const { across, down, blocks, finished, over, border } of choicesOf(one)) {
        const [wide, long] = [sideOf(across, one), sideOf(down, one)];
        expect(finished.width.valueOf()).toBeCloseTo(wide, NEARLY);
        expect(finished.length.valueOf()).toBeCloseTo(long, NEARLY);
        expect(over.width.valueOf()).toBeCloseTo(wide - one.width, NEARLY);
        expect(over.length.valueOf()).toBeCloseTo(long - one.length, NEARLY);
        expect(border.side.valueOf()).toBeCloseTo(Math.max(0, one.width - wide) / 2, NEARLY);
        expect(border.end.valueOf()).toBeCloseTo(Math.max(0, one.length - long) / 2, NEARLY);
        expect(blocks).toBe(across * down + (one.onPoint ? (across - 1) * (down - 1) : 0));
      }
  });

  it('they are ranked by the border that they lack, by what is too much, by their blocks', () => {
    for (const one of MANY) {
      const keys = choicesOf(one).map(({ over, border, blocks }) => [
        border.side.add(border.end).valueOf(),
        Math.max(0, over.width.valueOf()) + Math.max(0, over.length.valueOf()),
        blocks,
      ]);
      const sorted = [...keys].sort((a, b) => a[0]! - b[0]! || a[1]! - b[1]! || a[2]! - b[2]!);
      expect(keys, JSON.stringify(one)).toEqual(sorted);
    }
  });

  it('framed, there are ⌈(W − s − 2 B) ÷ (b + s)⌉ columns (geometry)', () => {
    for (const one of MANY.filter(({ frame, onPoint }) => frame && !onPoint)) {
      const { width, border, block, sashing } = one;
      const columns = Math.ceil((width - sashing - 2 * border) / (block + sashing));
      expect(choicesOf(one)[0]!.across).toBe(columns);
    }
  });
});

const top = answersOf(reckonTop);

describe('reckonTop', () => {
  const choices = (input: object) => top({ across: 1, down: 1, ...input }).choices!;

  it('for a queen bed of 60 × 80 in with a drop of 12 in, in 12 in blocks with framed sashing of 2 in', () => {
    // Worked by hand: 84 × 92 in. Columns of 14 and 2: 6 are 86, 5 are 72. Rows: 7 are 100, 6 are 86.
    expect(choices({ bed: 'queen', block: 12, sashing: 2, frame: true })).toEqual([
      {
        across: 6,
        down: 7,
        blocks: 42,
        finished: { width: '86', length: '100' },
        over: { width: '2', length: '8' },
        border: { side: '0', end: '0' },
      },
      {
        across: 6,
        down: 6,
        blocks: 36,
        finished: { width: '86', length: '86' },
        over: { width: '2', length: '-6' },
        border: { side: '0', end: '3' },
      },
      {
        across: 5,
        down: 7,
        blocks: 35,
        finished: { width: '72', length: '100' },
        over: { width: '-12', length: '8' },
        border: { side: '6', end: '0' },
      },
      {
        across: 5,
        down: 6,
        blocks: 30,
        finished: { width: '72', length: '86' },
        over: { width: '-12', length: '-6' },
        border: { side: '6', end: '3' },
      },
    ]);
  });

  it('for a size with borders of 5 in, and one that blocks meet exactly', () => {
    // 84 − 10 = 74 in: 6 columns of 14 and 2 are 86, 96 with the borders. 92 − 10 = 82: 6 rows.
    const [first] = choices({ target: '84 x 92', border: 5, block: 12, sashing: 2, frame: true });
    expect(first).toMatchObject({ across: 6, down: 6, finished: { width: '96', length: '96' } });
    // 5 × 12 = 60, 7 × 12 = 84: nothing else comes as near.
    expect(choices({ target: '60 x 84', block: 12 }).map(named)).toEqual(['5 × 7']);
  });

  it('on point, by the diagonals', () => {
    // 12 × √2 = 16.97: 4 are 67.88 and 5 are 84.85; 20 blocks and 12 in the rows between.
    const [first] = choices({ target: '60 x 80', block: 12, set: 'on-point' });
    expect(first).toMatchObject({ across: 4, down: 5, blocks: 32 });
  });

  it('has none without a wanted size, and an empty list where no number of blocks is enough', () => {
    expect(top({ block: 12, across: 4, down: 5 })).not.toHaveProperty('choices');
    expect(choices({ target: '300 x 300', block: 1 })).toEqual([]);
  });

  it('says that a quilt is not for a crib, and that a bed counts before a size', () => {
    const { notes } = top({ bed: 'crib', target: '40 x 60', block: 6, across: 5, down: 7 });
    expect(notes.join(' ')).toMatch(/does not belong where a baby sleeps/);
    expect(notes.join(' ')).toMatch(/The blocks are for the bed\./);
  });
});
