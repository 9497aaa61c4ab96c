import {
  corner,
  letterAt,
  type Box,
  type Picture,
  type Rectangle,
  type Shape,
} from '../../ledger/picture.js';
import { layOut, MOST_DRAWN, type Piece } from './lay-out.js';
import { say, type PartKind, type TopAnswer, type TopPart } from './shape.js';

/** The letters of the pieces beside the blocks. */
type Fabrics = Partial<Record<PartKind, string | undefined>>;

/** The letter of each kind of piece that a top has, by the order of its kinds. */
export const fabricsOf = (parts: TopPart[], letters: string[] | undefined): Fabrics =>
  Object.fromEntries(parts.map(({ used: { kind } }, at) => [kind, letterAt(letters, at)]));

/** The top to scale, block by block, with its sashing or its setting triangles. */
export const draw = (
  { used: { layout }, parts, finished, summary }: TopAnswer,
  letters?: string[],
): Picture[] => {
  const { onPoint, count } = layout;
  const isSashed = layout.sashing.gt(0);
  const fabrics = fabricsOf(parts, letters);
  /** The reckoned size. A measured top is drawn in it too, with its own size written beside it. */
  const { width, height, pieces } = layOut(layout);
  // The background shows where nothing else is drawn: setting triangles, sashing, or too many blocks to draw.
  const under: PartKind = onPoint ? 'triangles' : 'sashing';
  const rest = isSashed && onPoint ? 'cloth' : isSashed || onPoint ? 'other' : 'piece';
  const drawn = count > MOST_DRAWN ? [] : pieces.filter(({ kind }) => kind !== under);
  const lookOf = ({ kind, row = 0 }: Piece): Pick<Shape, 'is' | 'fabric'> => {
    // On point without sashing, rows are told apart.
    if (kind === 'block') return { is: onPoint && !isSashed && row % 2 ? 'cloth' : 'piece' };
    return { is: kind === 'sashing' ? 'other' : 'cloth', fabric: fabrics[kind] };
  };
  const background: Box = { x: 0, y: 0, width, height, is: rest, fabric: fabrics[under] };
  const first = pieces.find(({ kind }) => kind === under);
  return [
    {
      title: say('picture', { summary }),
      width,
      height,
      boxes: [
        // No words lie under the blocks.
        first ? { ...background, room: roomIn(first) } : background,
        ...(onPoint ? [] : drawn.map((piece): Box => ({ ...boundsOf(piece), ...lookOf(piece) }))),
      ],
      shapes: onPoint ? drawn.map((piece) => ({ points: piece.points, ...lookOf(piece) })) : [],
      dimensions: corner(finished).map((line, at) => ({ ...line, to: at ? height : width })),
    },
  ];
};

/** The box round a piece. */
const boundsOf = ({ points }: Piece): Rectangle => {
  const [across, down] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const [x, y] = [Math.min(...across), Math.min(...down)];
  return { x, y, width: Math.max(...across) - x, height: Math.max(...down) - y };
};

/** The room for a letter: a strip, or the middle of a triangle. */
const roomIn = (piece: Piece): Rectangle => {
  const { x, y, width, height } = boundsOf(piece);
  return piece.points.length > 3
    ? { x, y, width, height }
    : { x: x + width / 3, y: y + height / 12, width: width / 3, height: height / 3 };
};
