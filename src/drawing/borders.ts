import type { Style } from '../measure/format.js';
import type { Border, BordersResult } from '../reckon/borders.js';
import { inchesIn, inchesOf, lengthOf, type Box, type Picture, type Shape } from './picture.js';

interface Rectangle {
  x: number;
  y: number;
  width: number;
  height: number;
}

/** One border's pieces round what is inside it, each with the length it is cut to. */
const piecesRound = (border: Border, inside: Rectangle, style: Style): { boxes: Box[]; shapes: Shape[] } => {
  const sides = inchesOf(border.finished);
  const ends = inchesOf(border.finishedEnds ?? border.finished);
  const { x, y, width, height } = inside;
  const [right, bottom] = [x + width, y + height];
  const cutTo = (piece: string): string => {
    const found = border.pieces.find((one) => one.piece === piece);
    return found ? lengthOf(found.length, style) : '';
  };
  if (border.corners === 'mitred') {
    const corners: [number, number][] = [[x, y], [right, y], [right, bottom], [x, bottom]];
    const outer: [number, number][] = [[x - sides, y - ends], [right + sides, y - ends], [right + sides, bottom + ends], [x - sides, bottom + ends]];
    const shapes = corners.map((_, at): Shape => {
      const next = (at + 1) % 4;
      return { is: 'cloth', points: [corners[at]!, outer[at]!, outer[next]!, corners[next]!] };
    });
    return { boxes: [], shapes };
  }
  const sidesFirst = border.corners === 'sides-first';
  const tall = border.corners === 'ends-first' ? ends : 0;
  const wide = sidesFirst ? sides : 0;
  const boxes: Box[] = [];
  const add = (at: Rectangle, is: Box['is'], label: string): void => {
    if (at.width > 0 && at.height > 0) boxes.push({ ...at, is, label });
  };
  for (const left of [x - sides, right]) add({ x: left, y: y - tall, width: sides, height: height + 2 * tall }, 'cloth', cutTo('side'));
  for (const top of [y - ends, bottom]) add({ x: x - wide, y: top, width: width + 2 * wide, height: ends }, 'piece', cutTo('end'));
  if (border.corners === 'squares')
    for (const left of [x - sides, right])
      for (const top of [y - ends, bottom]) add({ x: left, y: top, width: sides, height: ends }, 'other', '');
  return { boxes, shapes: [] };
};

/** The borders round the top, from the inside out, each piece with the length it is cut to. */
export const drawBorders = (result: BordersResult, style: Style): Picture => {
  const width = inchesOf(result.finished.width);
  const height = inchesOf(result.finished.length);
  const sum = (values: number[]): number => values.reduce((total, value) => total + value, 0);
  const x = sum(result.borders.map(({ finished }) => inchesOf(finished)));
  const y = sum(result.borders.map(({ finished, finishedEnds }) => inchesOf(finishedEnds ?? finished)));
  let inside: Rectangle = { x, y, width: width - 2 * x, height: height - 2 * y };
  const top = inside;
  const boxes: Box[] = [{ ...top, is: 'quilt', label: 'quilt top' }];
  const shapes: Shape[] = [];
  for (const border of result.borders) {
    const round = piecesRound(border, inside, style);
    boxes.push(...round.boxes);
    shapes.push(...round.shapes);
    const sides = inchesOf(border.finished);
    const ends = inchesOf(border.finishedEnds ?? border.finished);
    inside = { x: inside.x - sides, y: inside.y - ends, width: inside.width + 2 * sides, height: inside.height + 2 * ends };
  }
  const topText = (id: string): string => lengthOf(result.working.find((row) => row.id === id)?.inches ?? '0', style);
  return {
    title: `The borders round the quilt top. ${result.summary}`,
    width,
    height,
    boxes,
    shapes,
    dimensions: [
      { side: 'top', from: 0, to: width, text: lengthOf(result.finished.width, style) },
      { side: 'left', from: 0, to: height, text: lengthOf(result.finished.length, style) },
      ...(inchesIn(result, 'width') ? ([{ side: 'bottom', from: top.x, to: top.x + top.width, text: `top ${topText('width')}` }, { side: 'right', from: top.y, to: top.y + top.height, text: `top ${topText('length')}` }] as const) : []),
    ],
  };
};
