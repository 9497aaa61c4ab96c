import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exact } from '../../src/measure/exact.js';
import { reckonBorders, type BordersResult } from '../../src/reckon.js';
import { CORNERS, eighths, inputs } from './borders-inputs.js';
import { answersOf, inches } from './asked.js';

const reckon = answersOf(reckonBorders);

// Assembling. Every length here is a whole number of eighths, or half of one, which a plain number holds exactly.

type Point = [number, number];
interface Rect {
  left: number;
  top: number;
  right: number;
  bottom: number;
}
const cornersOf = ({ left, top, right, bottom }: Rect): Point[] => [
  [left, top],
  [right, top],
  [right, bottom],
  [left, bottom],
];

/**
 * Sews the borders on by coordinates, from the cut pieces only: a seam comes off each edge, and each piece lies where its
 * style says. Gives the finished shapes and the rectangle they have to fill.
 */
const assemble = (
  { borders }: BordersResult,
  width: number,
  length: number,
  seam: number,
): { shapes: Point[][]; outer: Rect } => {
  let inner: Rect = { left: 0, top: 0, right: width, bottom: length };
  const shapes = [cornersOf(inner)];
  for (const border of borders) {
    const sewn = (name: string): { long: number; wide: number } => {
      const found = border.pieces.find(({ piece }) => piece === name);
      return found
        ? { long: inches(found.length) - 2 * seam, wide: inches(found.width) - 2 * seam }
        : { long: 0, wide: 0 };
    };
    const { left, top, right, bottom } = inner;
    const [side, end, square] = [sewn('side'), sewn('end'), sewn('corner')];
    const outer: Rect = {
      left: left - side.wide,
      top: top - end.wide,
      right: right + side.wide,
      bottom: bottom + end.wide,
    };
    const put = (x: number, y: number, wide: number, high: number): void => {
      if (wide && high) shapes.push(cornersOf({ left: x, top: y, right: x + wide, bottom: y + high }));
    };
    if (border.corners === 'mitred') {
      const [from, to] = [cornersOf(inner), cornersOf(outer)];
      from.forEach((point, at) => shapes.push([point, from[(at + 1) % 4]!, to[(at + 1) % 4]!, to[at]!]));
    } else {
      for (const x of [outer.left, right])
        put(x, border.corners === 'ends-first' ? outer.top : top, side.wide, side.long);
      for (const y of [outer.top, bottom])
        put(border.corners === 'sides-first' ? outer.left : left, y, end.long, end.wide);
      for (const x of [outer.left, right])
        for (const y of [outer.top, bottom]) put(x, y, square.wide, square.long);
    }
    inner = outer;
  }
  return { shapes, outer: inner };
};

/** Whether a convex shape holds a point that lies on none of its edges. */
const holds = (shape: Point[], [x, y]: Point): boolean => {
  const turns = shape.map(([ax, ay], at) => {
    const [bx, by] = shape[(at + 1) % shape.length]!;
    return (bx - ax) * (y - ay) - (by - ay) * (x - ax);
  });
  return turns.every((turn) => turn > 0) || turns.every((turn) => turn < 0);
};

const between = (values: number[]): [number, number][] => {
  const sorted = [...new Set(values)].sort((a, b) => a - b);
  return sorted.slice(1).map((value, at) => [sorted[at]!, value]);
};

describe('borders sewn on by coordinates', () => {
  test.each(CORNERS)('%s: the pieces fill the finished size, without gap or overlap', (style) => {
    fc.assert(
      fc.property(
        inputs,
        fc.array(fc.constantFrom(...CORNERS), { maxLength: 2 }),
        fc.option(fc.tuple(eighths(0, 40), eighths(0, 40))),
        (input, others, last) => {
          const listed = input.borders.split(', ').slice(0, 1 + others.length);
          const lastStyle = style === 'mitred' ? 'squares' : style;
          const corners = [...[style, ...others].slice(0, listed.length), ...(last ? [lastStyle] : [])];
          const wanted = (side: string, more: string): number =>
            inches(side) + 2 * inches(more) + listed.reduce((all, border) => all + 2 * inches(border), 0);
          const result = reckon({
            ...input,
            grain: 'across',
            join: 'straight',
            borders: listed.join(', '),
            corners: corners.join(', '),
            target: last ? `${wanted(input.width, last[0])} x ${wanted(input.length, last[1])}` : '',
          });
          const { shapes, outer } = assemble(
            result,
            inches(input.width),
            inches(input.length),
            inches(input.seam),
          );
          expect(outer.right - outer.left).toBe(inches(result.finished.width));
          expect(outer.bottom - outer.top).toBe(inches(result.finished.length));
          for (const [x, y] of shapes.flat())
            expect(x >= outer.left && x <= outer.right && y >= outer.top && y <= outer.bottom).toBe(true);
          // Every edge runs along a line of this grid, or corner to corner through one of its cells. So a cell is filled
          // once if the middles of its four triangles each lie in one shape.
          for (const [left, right] of between(shapes.flat().map(([x]) => x)))
            for (const [top, bottom] of between(shapes.flat().map(([, y]) => y)))
              for (const [over, down] of [
                [2, 1],
                [2, 3],
                [1, 2],
                [3, 2],
              ] as const) {
                const point: Point = [left + ((right - left) * over) / 4, top + ((bottom - top) * down) / 4];
                expect(shapes.filter((shape) => holds(shape, point)).length, `${point.join()}`).toBe(1);
              }
        },
      ),
      { numRuns: 60 },
    );
  });

  test('a mitred strip holds its piece, seams and all', () => {
    fc.assert(
      fc.property(inputs, fc.integer({ min: 0, max: 16 }), (input, seam) => {
        const s = seam / 8;
        const result = reckon({
          ...input,
          seam: `${seam}/8`,
          corners: 'mitred',
          grain: 'across',
          join: 'straight',
          borders: input.borders.split(', ')[0]!,
        });
        const border = result.borders[0]!;
        for (const { piece, length, width } of border.pieces) {
          const side = exact(piece === 'side' ? input.length : input.width).valueOf();
          const b = exact(border.finished).valueOf();
          // Geometry: the seam's line leaves the inner corner at 45°, so on the strip's outer edge, b + s from the corner,
          // it is b + s further out; its own allowance s, square to it, adds s √2 along that edge.
          expect(exact(length).valueOf()).toBeGreaterThanOrEqual(side + 2 * (b + s + s * Math.SQRT2));
          expect(exact(width).valueOf()).toBe(b + 2 * s);
        }
      }),
    );
  });
});
