import { inches } from '../../ledger/quantity.js';
import { exact, toMark, type Exact } from '../../measure/exact.js';
import { sayings, type Message } from '../../measure/message.js';
import { PATCHES } from '../../trade/patches.js';
import type { ListedPiece } from '../cutting/cut-list.js';
import type { PatchKind } from '../cutting/list-words.js';
import { say as sayOfPlan } from '../cutting/plan-shape.js';
import type { Chart, PlacedPatch } from './patch.js';

/** The names of the pieces that a block is cut into. */
export interface PieceSayings {
  square: undefined;
  rectangle: undefined;
  /** Squares for half-square triangles, two or eight at a time. */
  pairSquareTwo: undefined;
  pairSquareEight: undefined;
  quarterTriangles: undefined;
  /** Flying geese one at a time: a rectangle, and a square for each corner. */
  gooseRectangle: undefined;
  skyCorner: undefined;
  /** Flying geese four at a time: one large square, and four small ones. */
  gooseSquare: undefined;
  skySquare: undefined;
  /** A square in a square. */
  middleSquare: undefined;
  cornerTriangles: undefined;
}

type Name = keyof PieceSayings;

const say = sayings<PieceSayings>();

/** How units of two fabrics are made. */
export interface Method {
  halves: 'two' | 'eight';
  geese: 'one' | 'four';
  /** Rows of equal patches: patch by patch, or from strips that are sewn together and cut across. */
  rows: 'patches' | 'strips';
}

/** The seam allowance, and the marks that cut sizes fall on. */
export interface Seams {
  seam: Exact;
  mark: Exact;
}

/** Equal pieces of one fabric. `finished` is what they are cut from, before the allowances of their kind; `each` how many a batch takes. */
interface Given {
  fabric: string;
  name: Name;
  kind: PatchKind;
  /** How allowances are added, if it is not cut up as its kind says. */
  seams?: PatchKind;
  width: Exact;
  length: Exact;
  /** How many of these sizes with their allowances the sides of one piece hold. */
  times?: number;
  each: number;
}

/** Units that are made together: what a batch takes, and how many units it gives. */
interface Recipe {
  gives: number;
  pieces: Given[];
}

const square = (
  fabric: string,
  name: Name,
  side: Exact,
  more: Partial<Pick<Given, 'kind' | 'seams' | 'times' | 'each'>> = {},
): Given => ({ fabric, name, kind: 'rectangle', width: side, length: side, each: 1, ...more });

/**
 * Half-square triangles. Two at a time: a square of each fabric, 7/8 in larger than finished. Eight at a time: squares twice as
 * large, "Quilting basics: half-square triangles 8 at a time", theashleytomlinson.com.
 */
const halves = (letters: string[], side: Exact, { halves }: Method): Recipe[] => {
  const [name, times]: [Name, number] = halves === 'two' ? ['pairSquareTwo', 1] : ['pairSquareEight', 2];
  // The same unit turned by a half has its letters the other way round.
  const pieces = [...letters].sort().map((letter) => square(letter, name, side, { seams: 'half', times }));
  return [{ gives: times === 1 ? 2 : 8, pieces }];
};

/**
 * Flying geese. Four at a time, from one square for the geese and four for the sky: "Fast Flying Geese", Sylvia's Quilt Depot; they
 * come out in mirrored pairs, so both sides of the sky have to be of one fabric. One at a time: a rectangle with a square sewn
 * over each corner; common practice, no source.
 */
const geese = ([before = '', goose = '', after = '']: string[], long: Exact, { geese }: Method): Recipe[] => {
  const high = long.div(2);
  if (geese === 'four' && before === after)
    return [
      {
        gives: 4,
        pieces: [
          square(goose, 'gooseSquare', long, { seams: 'quarter' }),
          square(before, 'skySquare', high, { seams: 'half', each: 4 }),
        ],
      },
    ];
  const middle: Given = { ...square(goose, 'gooseRectangle', high), length: long };
  return [{ gives: 1, pieces: [middle, ...[before, after].map((sky) => square(sky, 'skyCorner', high))] }];
};

/** How to make a patch of this finished size. */
const recipesFor = (
  { kind, letters }: Pick<PlacedPatch, 'kind' | 'letters'>,
  { width, length }: { width: Exact; length: Exact },
  method: Method,
): Recipe[] => {
  const [first = '', second = ''] = letters;
  if (kind === 'half') return halves(letters, width, method);
  if (kind === 'goose') return geese(letters, width.gt(length) ? width : length, method);
  if (kind === 'quarter')
    return letters.map((letter) => ({
      gives: PATCHES.quarter.each,
      pieces: [square(letter, 'quarterTriangles', width, { kind: 'quarter' })],
    }));
  if (kind === 'inside')
    return [
      { gives: 1, pieces: [square(first, 'middleSquare', inches(width).sideOfDiagonal().value)] },
      // Four corners from two squares, with their straight grain along the edge of the block.
      { gives: 1, pieces: [square(second, 'cornerTriangles', width.div(2), { kind: 'half', each: 2 })] },
    ];
  const [short, long] = width.lte(length) ? [width, length] : [length, width];
  const name = short.equals(long) ? 'square' : 'rectangle';
  return [{ gives: 1, pieces: [{ ...square(first, name, short), length: long }] }];
};

/** The finished size of a patch in a block of this size. */
export const sizeOf = (
  { across, down }: Pick<PlacedPatch, 'across' | 'down'>,
  { columns, rows }: Chart,
  block: Exact,
): { width: Exact; length: Exact } => ({
  width: block.mul(across).div(columns),
  length: block.mul(down).div(rows),
});

/** A list of pieces while it grows. Equal pieces share a line, and pieces of one name a message. */
class Pieces {
  readonly #lines = new Map<string, ListedPiece>();
  readonly #names = new Map<Name, Pick<ListedPiece, 'piece' | 'cutAs'>>();

  constructor(readonly seams: Seams) {}

  add(given: Given, batches: number): void {
    const { fabric, name, kind, each } = given;
    const [width, length] = [this.#side(given, given.width), this.#side(given, given.length)];
    const key = [fabric, name, width.cut.toFraction(), length.cut.toFraction()].join(' ');
    const line = this.#lines.get(key);
    if (line) line.count += each * batches;
    else
      this.#lines.set(key, {
        fabric,
        ...this.#called(name, kind),
        width: width.cut,
        length: length.cut,
        // Triangles are trimmed when they are sewn.
        between: name === 'square' || name === 'rectangle' ? [...width.between, ...length.between] : [],
        count: each * batches,
        kind,
      });
  }

  /** A side with its allowances, on a mark; and the side before that, if it was between two marks. */
  #side({ kind, seams = kind, times = 1 }: Given, finished: Exact): { cut: Exact; between: Exact[] } {
    const { seam, mark } = this.seams;
    const side = finished.add(seam.mul(exact(PATCHES[seams].seams))).mul(times);
    const cut = toMark(side, mark);
    return { cut, between: cut.equals(side) ? [] : [side] };
  }

  #called(name: Name, kind: PatchKind): Pick<ListedPiece, 'piece' | 'cutAs'> {
    const known = this.#names.get(name);
    if (known) return known;
    const piece: Message = say(name);
    const called = { piece, cutAs: kind === 'rectangle' ? piece : sayOfPlan('squareFor', { piece }) };
    this.#names.set(name, called);
    return called;
  }

  get all(): ListedPiece[] {
    return [...this.#lines.values()];
  }
}

/** The pieces to cut for so many blocks. Whole squares are counted for all blocks together. */
export const piecesFor = (
  chart: Chart,
  block: Exact,
  blocks: number,
  method: Method,
  seams: Seams,
): ListedPiece[] => {
  const recipes = new Map<string, { recipe: Recipe; units: number }>();
  for (const patch of chart.patches)
    for (const recipe of recipesFor(patch, sizeOf(patch, chart, block), method)) {
      const key = recipe.pieces
        .map(({ fabric, name, width, length }) => [fabric, name, width.toFraction(), length.toFraction()])
        .join(' ');
      const known = recipes.get(key);
      if (known) known.units += 1;
      else recipes.set(key, { recipe, units: 1 });
    }
  const pieces = new Pieces(seams);
  for (const { recipe, units } of recipes.values())
    for (const given of recipe.pieces) pieces.add(given, Math.ceil((units * blocks) / recipe.gives));
  return pieces.all;
};
