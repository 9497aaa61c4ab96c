import { describe, expect, test } from 'vitest';
import { exact } from '../../src/measure/exact.js';
import { around, freeOf, type Rectangle } from '../../src/planner/free.js';
import { everyPiece, planCloth, type Cloth, type CutPiece } from '../../src/planner/plan.js';
import { boxOf, faultIn, sizeOf, type Box } from '../workbook/boxes.js';
import { dice } from './seeded.js';

const at = (x: number, y: number, width: number, height: number): Rectangle => ({
  x: exact(x),
  y: exact(y),
  width: exact(width),
  height: exact(height),
});
const written = (boxes: Rectangle[]): string[] =>
  boxes.map(boxOf).map(({ x, y, width, height }) => `${width} × ${height} at ${x}, ${y}`);

describe('what is left around pieces', () => {
  // Geometry, worked by hand: the piece lies in the top left corner of 40 × 10 in.
  test('is cut in the order that leaves the larger piece', () => {
    // 30 × 10 = 300 and 10 × 2; the other way 40 × 2 and 30 × 8 = 240
    expect(written(around([at(0, 0, 10, 8)], at(0, 0, 40, 10)))).toEqual([
      '30 × 10 at 10, 0',
      '10 × 2 at 0, 8',
    ]);
    // 40 × 8 = 320 and 5 × 2; the other way 5 × 10 = 50 and 35 × 8 = 280
    expect(written(around([at(0, 0, 35, 2)], at(0, 0, 40, 10)))).toEqual([
      '40 × 8 at 0, 2',
      '5 × 2 at 35, 0',
    ]);
  });

  test('stays in one piece below neighbours of one height', () => {
    // Three squares of 4 in beside a piece as high as the strip: 12 × 6 below them.
    const squares = [0, 4, 8].map((x) => at(10 + x, 0, 4, 4));
    expect(written(around([at(0, 0, 10, 10), ...squares], at(0, 0, 22, 10)))).toEqual(['12 × 6 at 10, 4']);
  });

  test('is everything where nothing is cut, and nothing where no cut parts the pieces', () => {
    expect(written(around([], at(1, 2, 3, 4)))).toEqual(['3 × 4 at 1, 2']);
    // A windmill of four 2 × 1 pieces round a hole: no edge-to-edge cut reaches the hole.
    const windmill = [at(0, 0, 2, 1), at(2, 0, 1, 2), at(1, 2, 2, 1), at(0, 1, 1, 2)];
    expect(around(windmill, at(0, 0, 3, 3))).toEqual([]);
  });
});

describe('what a plan leaves', () => {
  const CASES = 150;

  test.each([31, 32, 33, 34])(
    `is on the cloth, beside the pieces, and can be cut, in ${CASES} random plans from %i`,
    (seed) => {
      const roll = dice(seed);
      let [all, whole, named] = [0, 0, 0];
      for (let turn = 0; turn < CASES; turn += 1) {
        const side = (): number => 4 + roll(50);
        const pieces = Array.from({ length: 1 + roll(5) }, (): CutPiece => ({
          width: exact(side(), 4),
          height: exact(side(), 3),
          count: 1 + roll(12),
          turn: roll(3) > 0,
        }));
        const cloth: Cloth = {
          width: exact(80 + roll(90), 4),
          height: roll(2) ? exact(80 + roll(20), 4) : undefined,
        };
        const plan = planCloth(pieces, cloth);
        if (!plan.ok) continue;
        const sheets = Array.from({ length: plan.count }, (): Box[] => []);
        for (const piece of everyPiece(plan)) sheets[piece.sheet]?.push(boxOf(piece));
        const free = sheets.map((): Box[] => []);
        for (const one of freeOf(plan, cloth)) free[one.sheet]?.push(boxOf(one));
        const on = { x: 0, y: 0, ...sizeOf({ width: cloth.width, height: cloth.height ?? plan.length }) };
        sheets.forEach((boxes, sheet) => {
          const left = free[sheet] ?? [];
          expect(faultIn([...boxes, ...left], on)).toBeUndefined();
          const covered = [...boxes, ...left].reduce((sum, { width, height }) => sum + width * height, 0);
          all += 1;
          if (Math.abs(covered - on.width * on.height) < 1e-6) whole += 1;
          named += left.length;
        });
      }
      // Hardly anything is forgotten: the pieces and what is left make up the whole sheet.
      expect(all).toBeGreaterThan(CASES);
      expect(whole / all).toBeGreaterThan(0.98);
      expect(named).toBeGreaterThan(all);
    },
  );
});
