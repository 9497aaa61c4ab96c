import {
  corner,
  type Box,
  type Picture,
  type Rectangle,
  type Shape,
  type Stuff,
} from '../../ledger/picture.js';
import type { Message } from '../../measure/message.js';
import { drawPlans } from '../cutting/draw.js';
import type { Chart, Flight, PlacedPatch } from './patch.js';
import { say, type BlockAnswer } from './shape.js';

type Point = [x: number, y: number];

// Points of a patch, each way from 0 to 1.
const TOP_LEFT: Point = [0, 0];
const TOP_RIGHT: Point = [1, 0];
const BOTTOM_RIGHT: Point = [1, 1];
const BOTTOM_LEFT: Point = [0, 1];
const MIDDLE: Point = [0.5, 0.5];
const TOP: Point = [0.5, 0];
const RIGHT: Point = [1, 0.5];
const BOTTOM: Point = [0.5, 1];
const LEFT: Point = [0, 0.5];

const LOOKS: Stuff[] = ['piece', 'cloth', 'other'];

/** A part of a patch: the place of its letter, and its corners. */
type Part = [letter: number, ...points: Point[]];

const GEESE: Record<Flight, Part[]> = {
  up: [
    [0, TOP_LEFT, TOP, BOTTOM_LEFT],
    [1, TOP, BOTTOM_RIGHT, BOTTOM_LEFT],
    [2, TOP, TOP_RIGHT, BOTTOM_RIGHT],
  ],
  down: [
    [0, TOP_LEFT, BOTTOM, BOTTOM_LEFT],
    [1, TOP_LEFT, TOP_RIGHT, BOTTOM],
    [2, TOP_RIGHT, BOTTOM_RIGHT, BOTTOM],
  ],
  left: [
    [0, TOP_LEFT, TOP_RIGHT, LEFT],
    [1, TOP_RIGHT, BOTTOM_RIGHT, LEFT],
    [2, LEFT, BOTTOM_RIGHT, BOTTOM_LEFT],
  ],
  right: [
    [0, TOP_LEFT, TOP_RIGHT, RIGHT],
    [1, TOP_LEFT, RIGHT, BOTTOM_LEFT],
    [2, RIGHT, BOTTOM_RIGHT, BOTTOM_LEFT],
  ],
};

const HALVES: Record<'rising' | 'falling', Part[]> = {
  rising: [
    [0, TOP_LEFT, TOP_RIGHT, BOTTOM_LEFT],
    [1, TOP_RIGHT, BOTTOM_RIGHT, BOTTOM_LEFT],
  ],
  falling: [
    [0, TOP_LEFT, BOTTOM_RIGHT, BOTTOM_LEFT],
    [1, TOP_LEFT, TOP_RIGHT, BOTTOM_RIGHT],
  ],
};

const QUARTERS: Part[] = [
  [0, TOP_LEFT, TOP_RIGHT, MIDDLE],
  [1, TOP_RIGHT, BOTTOM_RIGHT, MIDDLE],
  [2, BOTTOM_RIGHT, BOTTOM_LEFT, MIDDLE],
  [3, BOTTOM_LEFT, TOP_LEFT, MIDDLE],
];

const INSIDE: Part[] = [
  [0, TOP, RIGHT, BOTTOM, LEFT],
  [1, TOP_LEFT, TOP, LEFT],
  [1, TOP, TOP_RIGHT, RIGHT],
  [1, RIGHT, BOTTOM_RIGHT, BOTTOM],
  [1, LEFT, BOTTOM, BOTTOM_LEFT],
];

const partsOf = (patch: PlacedPatch): Part[] => {
  if (patch.kind === 'half') return HALVES[patch.seam];
  if (patch.kind === 'goose') return GEESE[patch.flies];
  return patch.kind === 'quarter' ? QUARTERS : patch.kind === 'inside' ? INSIDE : [];
};

/** The room for a letter in a shape: a third of a triangle's longest side both ways, or half of a square on point. */
const roomIn = (points: Point[]): Rectangle => {
  const across = points.map(([x]) => x);
  const down = points.map(([, y]) => y);
  const reach = (all: number[]): number => Math.max(...all) - Math.min(...all);
  const middle = (all: number[]): number => all.reduce((sum, one) => sum + one, 0) / all.length;
  const side = Math.max(reach(across), reach(down)) / (points.length > 3 ? 2 : 3);
  return { x: middle(across) - side / 2, y: middle(down) - side / 2, width: side, height: side };
};

/** How each fabric of a block is drawn. */
interface Look {
  is: Stuff;
  fabric: string;
  label: Message;
}

/** The look of each fabric, in the order in which it is asked. */
const looksOf = (): ((letter: string | undefined) => Look) => {
  const looks = new Map<string, Look>();
  return (letter = '') => {
    const look = looks.get(letter) ?? {
      is: LOOKS[looks.size % LOOKS.length] ?? 'other',
      fabric: letter,
      label: say('letter', { letter }),
    };
    looks.set(letter, look);
    return look;
  };
};

/** A piece of cloth of a block, which is 1 each way. */
interface Piece extends Look {
  points: Point[];
  /** Whether it is a patch of its own, so a rectangle. */
  isPatch: boolean;
}

/** All pieces of cloth of a block. */
const piecesOf = ({ patches, columns, rows }: Chart): Piece[] => {
  const lookOf = looksOf();
  return patches.flatMap((patch) => {
    const isPatch = patch.kind === 'plain';
    const { letters, column, row, across, down } = patch;
    return (isPatch ? WHOLE : partsOf(patch)).map(([at, ...corners]): Piece => {
      const points = corners.map(([x, y]): Point => [
        (column + x * across) / columns,
        (row + y * down) / rows,
      ]);
      return { points, isPatch, ...lookOf(letters[at]) };
    });
  });
};

const WHOLE: Part[] = [[0, TOP_LEFT, TOP_RIGHT, BOTTOM_RIGHT, BOTTOM_LEFT]];

/** The same as shapes. Each has room for words. */
export const pieceShapes = (chart: Chart): Shape[] =>
  piecesOf(chart).map(({ points, is, fabric }) => ({ points, is, fabric, words: roomIn(points) }));

/** A block to scale, each piece of cloth as a shape with its letter. */
const blockPicture = ({ block, used: { chart, name } }: BlockAnswer): Picture => {
  const side = block.valueOf();
  const boxes: Box[] = [];
  const shapes: Shape[] = [];
  for (const { isPatch, label, is, fabric, ...piece } of piecesOf(chart)) {
    const points = piece.points.map(([x, y]): Point => [x * side, y * side]);
    const [[x = 0, y = 0] = [], , [right = 0, low = 0] = []] = points;
    if (isPatch) boxes.push({ x, y, width: right - x, height: low - y, is, fabric, label });
    else shapes.push({ points, is, fabric, words: { ...roomIn(points), label } });
  }
  return {
    title: say('picture', { name, block, columns: chart.columns, rows: chart.rows }),
    width: side,
    height: side,
    boxes,
    shapes,
    dimensions: corner({ width: block, length: block }),
  };
};

/** The block, and the cloth of each fabric with what is cut from it. */
export const draw = (answer: BlockAnswer): Picture[] => [blockPicture(answer), ...drawPlans(answer.fabrics)];
