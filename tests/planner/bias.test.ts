import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { biasSquares, squareByArea, type BiasNeed } from '../../src/planner/bias.js';
import { exact, ONE, type Exact } from '../../src/measure/exact.js';

type Point = [number, number];

/** Whether a point lies in a triangle, edges included; its corners go round either way. */
const within = ([x, y]: Point, corners: Point[]): boolean => {
  const sides = corners.map(([ax, ay], at) => {
    const [bx, by] = corners[(at + 1) % corners.length]!;
    return (bx - ax) * (y - ay) - (by - ay) * (x - ax);
  });
  return sides.every((side) => side >= -1e-9) || sides.every((side) => side <= 1e-9);
};

/**
 * Sews the tube with coordinates: the square [0, a]² is cut from (0, 0) to (a, a); the lower triangle goes to the left of
 * the upper one and its right edge is sewn to the upper one's left edge, each turned in by the seam; then the bottom edge
 * is rolled up to the top edge, each turned in by the seam. Gives the lengths of the whole strips between those two seams.
 */
const stripsOfTube = (a: number, seam: number, strip: number): number[] => {
  // moved so that the first seam lies on x = 0
  const upper: Point[] = [
    [-seam, 0],
    [-seam, a],
    [a - seam, a],
  ];
  const lower: Point[] = [
    [seam - a, 0],
    [seam, 0],
    [seam, a],
  ];
  /** Right of the seam the upper triangle shows, left of it the lower one. */
  const isCloth = (point: Point): boolean => within(point, point[0] >= 0 ? upper : lower);
  const [bottom, top] = [seam, a - seam];
  const strips: number[] = [];
  // the bias edges are y = x + seam and y = x + a − seam; the marked lines run between them, a strip's width apart
  for (let offset = a - seam; ; offset -= strip * Math.SQRT2) {
    const below = offset - strip * Math.SQRT2;
    if (below < seam - 1e-9) return strips;
    const corners: Point[] = [
      [bottom - offset, bottom],
      [top - offset, top],
      [top - below, top],
      [bottom - below, bottom],
    ];
    // every part of the strip is cloth: looked at on a fine grid inside it
    for (let i = 0; i <= 20; i++)
      for (let j = 0; j <= 20; j++) {
        const along = bottom + ((top - bottom) * i) / 20;
        const point: Point = [along - (offset + ((below - offset) * j) / 20), along];
        if (!isCloth(point)) throw new Error(`No cloth at ${point.join(', ')} in a tube of ${a}.`);
      }
    const [[x1, y1], [x2, y2]] = [corners[0]!, corners[1]!];
    strips.push(Math.hypot(x2 - x1, y2 - y1));
  }
};

const lengthOfTube = (a: number, seam: number, strip: number): number =>
  stripsOfTube(a, seam, strip).reduce((all, length) => all + length, 0);

const need = (length: string | number, strip: string | number): BiasNeed => ({
  length: exact(length),
  strip: exact(strip),
  seam: exact(1, 4),
  join: exact(strip),
  unit: ONE,
});

describe('continuous bias', () => {
  // 250 of 2 in and 100 of 3 1/2 in are the published examples for the area rule; the tube is the geometry above.
  test.each([
    [250, '2', 23, 24, 8],
    [100, '3.5', 20, 21, 4],
  ])(
    '%d in of %s in: by area %d in, but only %d in gives whole rounds',
    (length, strip, byArea, side, rounds) => {
      expect(squareByArea(need(length, strip)).valueOf()).toBe(byArea);
      const found = biasSquares(need(length, strip), exact(40))!;
      expect([found.side.valueOf(), found.count, found.rounds]).toEqual([side, 1, rounds]);
      expect(stripsOfTube(side, 0.25, Number(strip))).toHaveLength(rounds);
      expect(lengthOfTube(side, 0.25, Number(strip))).toBeGreaterThanOrEqual(length);
      expect(lengthOfTube(side - 1, 0.25, Number(strip))).toBeLessThan(length);
      expect(lengthOfTube(byArea, 0.25, Number(strip))).toBeLessThan(length);
    },
  );

  test('one square is the least whole one whose tube reaches, and never below the area rule', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 8, max: 4000 }),
        fc.integer({ min: 6, max: 40 }),
        fc.integer({ min: 1, max: 4 }),
        (quarters, eighths, seamEighths) => {
          const job = {
            ...need(0, 0),
            length: exact(quarters, 4),
            strip: exact(eighths, 8),
            seam: exact(seamEighths, 8),
          };
          const { side, count, lengthSquared } = biasSquares(job, exact(1000))!;
          const [a, strip, seam] = [side.valueOf(), eighths / 8, seamEighths / 8];
          expect(count).toBe(1);
          expect(lengthOfTube(a, seam, strip)).toBeGreaterThanOrEqual(quarters / 4 - 1e-6);
          expect(lengthOfTube(a - 1, seam, strip)).toBeLessThan(quarters / 4 + 1e-6);
          expect(lengthOfTube(a, seam, strip) ** 2 / lengthSquared.valueOf()).toBeCloseTo(1, 9);
          expect(side.gte(squareByArea(job))).toBe(true);
        },
      ),
      { numRuns: 300 },
    );
  });

  test('by area: the least side whose sewn square holds the strip’s area', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2000 }), fc.integer({ min: 4, max: 60 }), (length, eighths) => {
        const area = length * eighths * 8; // in 1/64 square inches
        const side = squareByArea(need(length, `${eighths}/8`)).valueOf();
        expect(((side - 0.5) * 8) ** 2).toBeGreaterThanOrEqual(area);
        if (side > 1) expect(((side - 1.5) * 8) ** 2).toBeLessThan(area);
      }),
    );
  });

  test('if the cloth is too narrow: the fewest squares that fit, with the smallest side for that number', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 100, max: 3000 }),
        fc.integer({ min: 8, max: 28 }),
        fc.integer({ min: 12, max: 45 }),
        (length, eighths, widest) => {
          const strip = eighths / 8;
          const reaches = (count: number, a: number): boolean =>
            count * lengthOfTube(a, 0.25, strip) - (count - 1) * strip >= length;
          const found = biasSquares(need(length, `${eighths}/8`), exact(widest))!;
          const [side, count] = [found.side.valueOf(), found.count];
          expect(side).toBeLessThanOrEqual(widest);
          expect(reaches(count, side)).toBe(true);
          expect(count === 1 || !reaches(count - 1, widest)).toBe(true);
          expect(reaches(count, side - 1)).toBe(false);
        },
      ),
      { numRuns: 150 },
    );
  });

  test('nothing where not one round fits', () => {
    const widest = (width: number): Exact | undefined => biasSquares(need(10, 5), exact(width))?.side;
    // one round of 5 in needs 5 × √2 + 1/2 = 7.57 in
    expect(widest(7)).toBeUndefined();
    expect(widest(8)?.valueOf()).toBe(8);
  });
});
