import { exact, most, sum, ZERO, type Exact } from '../measure/exact.js';
import { mixed, type Style } from '../measure/format.js';
import type { Border, BordersResult } from '../reckon/borders.js';
import { inchesOf, lengthOf, type Box, type Picture, type Rectangle, type Shape } from './picture.js';
import { corner, inner, sidesOf } from './sides.js';

/** What lies inside, with so much more at the sides and at top and bottom. */
const grown = ({ x, y, width, height }: Rectangle, sides: number, ends: number): Rectangle => ({
  x: x - sides,
  y: y - ends,
  width: width + 2 * sides,
  height: height + 2 * ends,
});

const cornersOf = ({ x, y, width, height }: Rectangle): Shape['points'] => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
];

/** The borders round the top, from the inside out, each piece with the length it is cut to. */
export const drawBorders = (result: BordersResult, style: Style): Picture => {
  const widthsOf = ({ finished, finishedEnds = finished }: Border): [number, number] => [
    inchesOf(finished),
    inchesOf(finishedEnds),
  ];
  const around = (of: 'finished' | 'finishedEnds'): Exact =>
    sum(result.borders.map((border) => exact(border[of] ?? border.finished))).mul(2);
  /** What a measured border leaves for the top; one too short leaves nothing. */
  const within = (outer: string, borders: Exact): string => mixed(most(ZERO, exact(outer).sub(borders)));
  const [sides, ends] = [around('finished'), around('finishedEnds')];
  const top = { width: within(result.finished.width, sides), length: within(result.finished.length, ends) };
  const [x, y] = [sides.valueOf() / 2, ends.valueOf() / 2];
  let inside: Rectangle = { x, y, ...sidesOf(top) };
  const boxes: Box[] = [{ ...inside, is: 'quilt', label: 'quilt top' }];
  const shapes: Shape[] = [];
  const add = (at: Rectangle, is: Box['is'], label = ''): void => {
    if (at.width > 0 && at.height > 0) boxes.push({ ...at, is, label });
  };
  for (const border of result.borders) {
    const [sides, ends] = widthsOf(border);
    const outside = grown(inside, sides, ends);
    if (border.corners === 'mitred') {
      const [from, to] = [cornersOf(inside), cornersOf(outside)];
      from.forEach((point, at) => {
        const next = (at + 1) % 4;
        shapes.push({ is: 'cloth', points: [point, to[at]!, to[next]!, from[next]!] });
      });
    } else {
      const cutTo = (name: string): string => {
        const length = border.pieces.find(({ piece }) => piece === name)?.length;
        return length ? lengthOf(length, style) : '';
      };
      const upright = border.corners === 'ends-first' ? outside : inside;
      const level = border.corners === 'sides-first' ? outside : inside;
      const lefts = [outside.x, inside.x + inside.width];
      const tops = [outside.y, inside.y + inside.height];
      for (const x of lefts) add({ ...upright, x, width: sides }, 'cloth', cutTo('side'));
      for (const y of tops) add({ ...level, y, height: ends }, 'piece', cutTo('end'));
      if (border.corners === 'squares')
        for (const x of lefts) for (const y of tops) add({ x, y, width: sides, height: ends }, 'other');
    }
    inside = outside;
  }
  return {
    title: `The borders round the quilt top. ${result.summary}`,
    width: inside.width,
    height: inside.height,
    boxes,
    shapes,
    dimensions: [...corner(result.finished, style), ...inner(x, y, top, style, 'top')],
  };
};
