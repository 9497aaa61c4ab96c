import { pieceShapes } from '../calculators/block/draw.js';
import type { Chart } from '../calculators/block/patch.js';
import { draw as drawBorders } from '../calculators/borders/draw.js';
import type { BordersAnswer } from '../calculators/borders/shape.js';
import type { BindingAnswer } from '../calculators/binding/shape.js';
import { layOut, MOST_DRAWN, type Piece } from '../calculators/top/lay-out.js';
import { fabricsOf } from '../calculators/top/draw.js';
import type { TopAnswer } from '../calculators/top/shape.js';
import { corner, drawnSize, letterAt, type Picture, type Rectangle, type Shape } from '../ledger/picture.js';
import type { Size } from '../ledger/quilt.js';
import { inTurn } from './in-turn.js';
import { say } from './sayings.js';

type Point = [x: number, y: number];

/** A part of the quilt with the letters of its fabrics, as its author wrote them. */
interface Lettered<A> {
  answer: A;
  letters: string[];
}

/** A kind of block in the places of the top. */
export interface BlockKind {
  name: string;
  count: number;
  /** Undefined while something in it is wrong, or is still being planned. */
  chart: Chart | undefined;
}

/** What there is of a quilt. */
export interface QuiltParts {
  top?: Lettered<TopAnswer> | undefined;
  /** In the order in which they begin. */
  blocks?: BlockKind[];
  borders?: Lettered<BordersAnswer> | undefined;
  binding?: Lettered<BindingAnswer> | undefined;
}

/** More pieces than this nobody could tell apart, and they would slow a page down: their blocks are drawn plain. */
const MOST_PIECES = 12_000;

/** Puts the points of a shape in another place. */
const moved = (shapes: Shape[], at: (point: Point) => Point): Shape[] =>
  shapes.map(({ words, ...shape }) => {
    const points = shape.points.map(at);
    return { ...shape, points, ...(words && { words: roomIn(points) }) };
  });

/** The room for a letter in the middle of a shape. */
const roomIn = (points: Point[]): Rectangle => {
  const [across, down] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const reach = (all: number[]): number => Math.max(...all) - Math.min(...all);
  const middle = (all: number[]): number => all.reduce((sum, one) => sum + one, 0) / all.length;
  // A triangle has room for a third of its sides, and what stands on a corner for half of them.
  const isLevel = points.some(([x, y], at) =>
    points.slice(at + 1).some(([other, low]) => x === other || y === low),
  );
  const share = points.length < 4 ? 1 / 3 : isLevel ? 0.9 : 1 / 2;
  const [width, height] = [reach(across) * share, reach(down) * share];
  return { x: middle(across) - width / 2, y: middle(down) - height / 2, width, height };
};

const cornersOf = ({ x, y, width, height }: Rectangle): Point[] => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
];

const ORIGIN: Point = [0, 0];

/** Where a point of a block lies, if the block lies in this piece of the top. A piece on point is turned. */
const inPlace =
  ([[left, top] = ORIGIN, [right, level] = ORIGIN, , [low, bottom] = ORIGIN]: Point[]) =>
  ([x, y]: Point): Point => [
    left + (right - left) * x + (low - left) * y,
    top + (level - top) * x + (bottom - top) * y,
  ];

/** The blocks in their places, each from its chart. The letters stand in the first of each kind. */
const blocksIn = (places: Piece[], kinds: BlockKind[], layout: TopAnswer['used']['layout']): Shape[] => {
  const turns = inTurn(
    kinds.map(({ count }) => count),
    layout,
  );
  const inOne = kinds.map(({ chart }) => (chart ? pieceShapes(chart) : []));
  const all = turns.reduce<number>((sum, kind) => sum + (inOne[kind ?? -1]?.length ?? 0), 0);
  return places.flatMap(({ points }, at): Shape[] => {
    const kind = turns[at];
    if (kind === undefined) return [{ points, is: kinds.length ? 'spare' : 'piece' }];
    const shapes = inOne[kind] ?? [];
    if (!shapes.length || all > MOST_PIECES) return [{ points, is: 'piece' }];
    const isFirst = turns.indexOf(kind) === at;
    return moved(shapes, inPlace(points)).map((shape) => (isFirst ? shape : { ...shape, words: undefined }));
  });
};

/** The top in this room: its blocks, and what is between and beside them. */
const topIn = ({ answer, letters }: Lettered<TopAnswer>, kinds: BlockKind[], room: Rectangle): Shape[] => {
  const { layout } = answer.used;
  const fabrics = fabricsOf(answer.parts, letters);
  const { width, height, pieces } = layOut(layout);
  if (layout.count > MOST_DRAWN) return [{ points: cornersOf(room), is: 'piece' }];
  const places = pieces.filter(({ kind }) => kind === 'block');
  const seen = new Set<string>();
  const others = pieces.flatMap(({ kind, points }): Shape[] => {
    if (kind === 'block') return [];
    const isFirst = !seen.has(kind);
    seen.add(kind);
    const is = kind === 'cornerstones' ? 'cloth' : 'other';
    return [{ points, is, fabric: fabrics[kind], ...(isFirst && { words: roomIn(points) }) }];
  });
  // A top that was measured is drawn in that size.
  return moved([...others, ...blocksIn(places, kinds, layout)], ([x, y]) => [
    room.x + (x * room.width) / width,
    room.y + (y * room.height) / height,
  ]);
};

/** The borders, and the room that they leave for the top. */
const bordersOf = ({ answer, letters }: Lettered<BordersAnswer>): { shapes: Shape[]; room: Rectangle } => {
  const [picture] = drawBorders(answer, letters);
  const { boxes = [], shapes = [], width = 0, height = 0 } = picture ?? {};
  const strips = boxes.filter(({ is }) => is !== 'quilt');
  const lettered = (points: Point[], { is, fabric }: Pick<Shape, 'is' | 'fabric'>): Shape => ({
    points,
    is,
    fabric,
    words: roomIn(points),
  });
  return {
    shapes: [
      ...strips.map((box) => lettered(cornersOf(box), box)),
      ...shapes.map((shape) => lettered(shape.points, shape)),
    ],
    room: boxes.find(({ is }) => is === 'quilt') ?? { x: 0, y: 0, width, height },
  };
};

/** The edge round the quilt, mitred at the corners. */
const bindingRound = ({ width, height }: Rectangle, edge: number, fabric: string | undefined): Shape[] => {
  const inner = cornersOf({ x: edge, y: edge, width, height });
  const outer = cornersOf({ x: 0, y: 0, width: width + 2 * edge, height: height + 2 * edge });
  return inner.map((point, at): Shape => {
    const next = (at + 1) % inner.length;
    const points = [outer[at], outer[next], inner[next], point].flatMap((one) => (one ? [one] : []));
    return { points, is: 'piece', fabric };
  });
};

/** The size of what there is: with the borders, or without. */
const sizeOf = ({ top, borders }: QuiltParts): Size | undefined =>
  borders?.answer.finished ?? top?.answer.finished;

/**
 * The whole quilt to scale, from its blocks to its binding: every piece of cloth once, as large as it finishes. Where a part is
 * missing, it has what there is. The binding lies outside the finished size, where it covers the raw edge.
 */
export const wholeQuilt = (parts: QuiltParts): Picture | undefined => {
  const { top, blocks = [], borders, binding } = parts;
  const size = sizeOf(parts);
  if (!size) return undefined;
  const whole = { x: 0, y: 0, ...drawnSize(size) };
  const edge = binding?.answer.used.edge.valueOf() ?? 0;
  const { shapes: round, room } = borders ? bordersOf(borders) : { shapes: [], room: whole };
  const inside: Shape[] = top ? topIn(top, blocks, room) : [{ points: cornersOf(room), is: 'quilt' }];
  const [width, height] = [whole.width + 2 * edge, whole.height + 2 * edge];
  const shapes = moved([...inside, ...round], ([x, y]) => [x + edge, y + edge]);
  return {
    title: say('quiltPicture', {
      size,
      blocks: blocks.map(({ name, count }) => ({ name, count })),
      places: top?.answer.blocks ?? 0,
      borders: borders?.answer.borders.length ?? 0,
      isBound: !!binding,
    }),
    width,
    height,
    boxes: [],
    shapes: edge ? [...bindingRound(whole, edge, letterAt(binding?.letters)), ...shapes] : shapes,
    isTiled: true,
    largeFor: 'pieces',
    dimensions: corner(size).map((line) => ({ ...line, from: line.from + edge, to: line.to + edge })),
  };
};
