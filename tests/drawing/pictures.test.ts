import { describe, expect, test } from 'vitest';
import type { Box, Line, Shape } from '../../src/ledger/picture.js';
import { reckonBinding } from '../../src/reckon.js';
import { answersOf } from '../reckon/asked.js';
import { drawn, type Drawn, type DrawnName } from './drawn.js';

/** The one picture of a good answer. */
const pictureOf = (name: DrawnName, input: object): Drawn => {
  const [only, ...more] = drawn(name, input);
  expect(more).toEqual([]);
  return only ?? expect.fail('Nothing is drawn.');
};

const places = (boxes: Drawn['boxes']): number[][] =>
  boxes
    .map(({ x, y, width, height }) => [x, y, width, height])
    .sort((a, b) => a[1]! - b[1]! || a[0]! - b[0]!);
const having = ({ boxes }: Drawn, is: Box['is']): number[][] => places(boxes.filter((box) => box.is === is));

/** The shorter and the longer side of a shape with four right angles. */
const sidesOf = ({ points }: Shape): [number, number] => {
  const far = (a: number, b: number): number =>
    Math.hypot(points[a]![0] - points[b]![0], points[a]![1] - points[b]![1]);
  expect(far(0, 2)).toBeCloseTo(far(1, 3), 6);
  expect([far(0, 1), far(1, 2)]).toEqual([expect.closeTo(far(2, 3), 6), expect.closeTo(far(3, 0), 6)]);
  return [Math.min(far(0, 1), far(1, 2)), Math.max(far(0, 1), far(1, 2))];
};

describe('a top', () => {
  const quilt = { block: 12, across: 4, down: 3, sashing: 2, cornerstones: true };

  test('straight, with a cornerstone wherever two strips of sashing cross', () => {
    // Geometry: a block and its sashing are 14 in; inside, three lines of sashing cross two.
    const picture = pictureOf('top', quilt);
    expect(having(picture, 'piece')).toEqual(
      [0, 14, 28].flatMap((y) => [0, 14, 28, 42].map((x) => [x, y, 12, 12])),
    );
    expect(having(picture, 'cloth')).toEqual([12, 26].flatMap((y) => [12, 26, 40].map((x) => [x, y, 2, 2])));
  });

  test('framed, with one at the end of every strip too', () => {
    const picture = pictureOf('top', { ...quilt, frame: true });
    const stones = [0, 14, 28, 42].flatMap((y) => [0, 14, 28, 42, 56].map((x) => [x, y, 2, 2]));
    expect(having(picture, 'cloth')).toEqual(stones);
    expect([picture.width, picture.height]).toEqual([58, 44]);
  });

  test('on point, of squares that have the block’s own sides', () => {
    // Geometry: 2 × 2 blocks on point and the one between them; the diagonal of 12 in is 12 √2.
    const { shapes = [], width } = pictureOf('top', { block: 12, across: 2, down: 2, set: 'on-point' });
    expect(width).toBeCloseTo(24 * Math.SQRT2, 6);
    expect(shapes).toHaveLength(5);
    for (const shape of shapes)
      expect(sidesOf(shape)).toEqual([expect.closeTo(12, 6), expect.closeTo(12, 6)]);
  });

  test('on point with sashing: strips as long as a block and as wide as the sashing, and squares where they meet', () => {
    // Geometry: five blocks in a cross have 16 sides, 20 less the four that two share, and 12 corners.
    const { shapes = [] } = pictureOf('top', {
      block: 12,
      across: 2,
      down: 2,
      sashing: 2,
      cornerstones: true,
      set: 'on-point',
    });
    const of = (is: Shape['is']): [number, number][] =>
      shapes.filter((shape) => shape.is === is).map(sidesOf);
    const close = (count: number, short: number, long: number): unknown =>
      Array.from({ length: count }, (): unknown[] => [expect.closeTo(short, 6), expect.closeTo(long, 6)]);
    expect(of('piece')).toEqual(close(5, 12, 12));
    expect(of('other')).toEqual(close(16, 2, 12));
    expect(of('cloth')).toEqual(close(12, 2, 2));
  });
});

describe('a back', () => {
  // Geometry: two panels of 40 in less a seam of 1/2 in where they meet; the back is 4 in larger all round.
  test('its panels lie side by side, with a seam between them and none at the edge', () => {
    const picture = pictureOf('backing', { width: 60, length: 66, oneWay: true });
    expect(having(picture, 'cloth')).toEqual([
      [0, 0, 39.5, 74],
      [39.5, 0, 28.5, 74],
    ]);
    expect(having(picture, 'quilt')).toEqual([[4, 4, 60, 66]]);
    expect(picture.lines).toEqual([{ is: 'seam', from: [39.5, 0], to: [39.5, 74] }]);
  });

  test('a strip has a seam along the panel, and one across it where its pieces meet', () => {
    // Geometry: 83 in of two panels of 42 in, then a strip of 74 in from pieces of 42 in.
    const quilt = { width: 66, length: 84, fabricWidth: 42, piecedStrip: true };
    const { lines = [] } = pictureOf('backing', quilt);
    const seams = lines.map(({ from, to }) => [...from, ...to].join(' ')).sort();
    expect(seams).toEqual(
      ['0 41.5 74 41.5', '0 82.5 41.5 82.5', '41.5 82.5 41.5 92', '41.5 82.5 74 82.5'].sort(),
    );
  });
});

describe('batting', () => {
  test('has the quilt in its middle', () => {
    // Geometry: 4 in more all round.
    const picture = pictureOf('batting', { width: 58, length: 70 });
    expect(having(picture, 'cloth')).toEqual([[0, 0, 66, 78]]);
    expect(having(picture, 'quilt')).toEqual([[4, 4, 58, 70]]);
  });
});

describe('a binding', () => {
  const quilt = { width: 40, length: 50 };
  const corners = ({ lines = [] }: Drawn): number[][] => lines.map(({ from, to }) => [...from, ...to]);

  test('a join at 45° crosses the square where two strips overlap; a straight one crosses the strip', () => {
    // Geometry: strips of 2 1/2 in on 40 in cloth; a straight join takes a seam of 1/4 in from both, 1/2 in.
    const ends = [0, 2.5, 5, 7.5];
    expect(corners(pictureOf('binding', { ...quilt, join: 'diagonal' }))).toEqual(
      ends.map((y) => [37.5, y, 40, y + 2.5]),
    );
    expect(corners(pictureOf('binding', { ...quilt, join: 'straight' }))).toEqual(
      ends.map((y) => [39.5, y, 39.5, y + 2.5]),
    );
  });

  test('the strips of a bias square run along its diagonal, each as wide as the one before', () => {
    const bias = { ...quilt, cut: 'bias', stripWidth: '2 1/2' };
    const side = Number(answersOf(reckonBinding)(bias).square);
    const { lines = [] } = pictureOf('binding', bias);
    const distance = ({ from: [x, y] }: Line): number => (x - y) / Math.SQRT2;
    for (const { from, to } of lines) {
      expect(to[0] - from[0]).toBeCloseTo(to[1] - from[1], 6);
      expect(Math.min(...from)).toBe(0);
      expect(Math.max(...to)).toBe(side);
    }
    // Geometry: from the diagonal to a corner is half a diagonal.
    const strips = Math.floor(side / Math.SQRT2 / 2.5);
    const apart = Array.from(
      { length: 2 * strips + 1 },
      (_, at) => expect.closeTo((at - strips) * 2.5, 6) as number,
    );
    expect(lines.map(distance).sort((a, b) => a - b)).toEqual(apart);
  });
});

describe('borders', () => {
  const quilt = { width: 58, length: 72, borders: '2' };
  const labels = ({ boxes }: Drawn): string[] => boxes.flatMap(({ label }) => label || []).sort();

  // Geometry: what runs past the corners is 4 in longer; a seam of 1/4 in at both ends.
  test.each([
    ['sides-first', '72 1/2 in', '62 1/2 in', 0],
    ['ends-first', '76 1/2 in', '58 1/2 in', 0],
    ['squares', '72 1/2 in', '58 1/2 in', 4],
  ])('%s: sides cut to %s, ends to %s, %i corner squares', (corners, side, end, squares) => {
    const picture = pictureOf('borders', { ...quilt, corners });
    expect(labels(picture)).toEqual([side, side, end, end, 'quilt top'].sort());
    const corner = [0, 74].flatMap((y) => [0, 60].map((x) => [x, y, 2, 2]));
    expect(having(picture, 'other')).toEqual(corner.slice(0, squares));
    expect(picture.shapes).toEqual([]);
  });
});

describe('cut cloth', () => {
  // Geometry: eight pieces 5 in wide fill 40 in of cloth.
  const picture = pictureOf('cutting', { list: 'A | rectangle | 3 1/2 x 5 | 8' });

  test('each piece lies beside the one before, with its sizes where its name does not fit', () => {
    const pieces = picture.boxes.filter(({ is }) => is === 'piece');
    expect(places(pieces)).toEqual([0, 5, 10, 15, 20, 25, 30, 35].map((x) => [x, 0, 5, 3.5]));
    for (const { label, short } of pieces) expect([label, short]).toEqual(['rectangle', '3 1/2 × 5']);
  });

  test('a thousand pieces are as few shapes as they have looks', () => {
    expect(picture.isTiled).toBe(true);
  });
});
