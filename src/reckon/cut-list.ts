import { MOST_PIECES } from '../planner/grid.js';
import { exact, least, toMark, ZERO, type Exact } from '../measure/exact.js';
import type { Style } from '../measure/format.js';
import { inUnit, quoted, splitSize } from '../measure/parse.js';
import type { Units } from '../measure/units.js';
import { PATCHES } from '../trade/patches.js';
import { readLength, refuse, textOf, unlessRefused } from './fields.js';

/** One line of a cut list, ready to be cut: a triangle is the square it comes from. */
export interface ListedPiece {
  /** The fabric's letter or name; empty where the list names none. */
  fabric: string;
  piece: string;
  /** Cut sizes in inches. */
  width: Exact;
  length: Exact;
  /** Sides that were written as they are cut, and lie between the ruler's marks. */
  between: Exact[];
  /** How many squares or rectangles to cut. */
  count: number;
  /** For triangles: how a square is cut up, and into how many. */
  cutUp: string;
  each: number;
  /** What is cut from a strip: `square for half-square triangles`. */
  cutAs: string;
}

type Column = 'count' | 'fabric' | 'size' | 'width' | 'length' | 'piece';

/** What a column's head says, the plainest words first. */
const HEADS: [Column, RegExp][] = [
  ['count', /how many|number|count|quantity|qty|^no\.?$|^#$/i],
  ['fabric', /fabric|cloth|colou?r|letter/i],
  ['size', /^(?!.*(wid|long|length|height)).*(size|dimension)|wid.*(length|height)|(length|height).*wid/i],
  ['length', /length|height|long|down/i],
  ['width', /wid|across/i],
  ['size', /measure|^cut$/i],
  ['count', /pieces|^cut$/i],
  ['piece', /piece|patch|unit|shape/i],
  ['piece', /part|name|what|for/i],
];

const MOST_LINES = 500;

/** What stands between the cells of a line: the first of these that is in it. */
const MARKS = ['\t', '|', ';'];

/** Lines of cells: a table's rows, or text with tabs between cells, or |, or semicolons. */
const linesOf = (list: unknown): string[][] => {
  const lines = Array.isArray(list)
    ? list.map((line: unknown) => (Array.isArray(line) ? line.map(textOf) : [textOf(line)]))
    : textOf(list)
        .split(/\r?\n/)
        .map((line) => line.trimEnd().replace(/;$/, '').trimEnd())
        .map((line) => line.split(MARKS.find((mark) => line.includes(mark)) ?? '\n'));
  return lines
    .map((line) => line.map((cell) => cell.replace(/\s+/g, ' ').trim()))
    .filter((line) => line.some(Boolean));
};

const written = (lines: string[][]): string =>
  lines.map((line) => line.map((cell) => cell.replaceAll('|', '/')).join(' | ')).join('\n');

/** The list as text, a line each with | between its cells. */
export const writeCutList = (list: unknown): string => written(linesOf(list));

/** Which column holds what, by its place. */
type Columns = Partial<Record<Column, number>>;

/** From the words in the head; each column is taken once. */
const columnsOf = (head: string[]): Columns => {
  const columns: Columns = {};
  const taken = new Set<number>();
  for (const [name, words] of HEADS) {
    const at = head.findIndex((cell, at) => !taken.has(at) && words.test(cell));
    if (at < 0 || columns[name] !== undefined) continue;
    columns[name] = at;
    taken.add(at);
  }
  return columns;
};

const USUAL: Columns = { fabric: 0, piece: 1, size: 2, count: 3 };

const kindOf = (words: string): keyof typeof PATCHES =>
  /quarter.?square|\bqst/i.test(words) ? 'quarter' : /half.?square|\bhst/i.test(words) ? 'half' : 'rectangle';

/** The columns of a list, and whether its first line is their head. */
const layoutOf = (lines: string[][]): { columns: Columns; hasHead: boolean } => {
  const [head = []] = lines;
  const named = columnsOf(head);
  const hasHead = Object.keys(named).length > 1 && !head.some((cell) => /^([x×] ?)?\d/i.test(cell));
  return { columns: hasHead ? named : USUAL, hasHead };
};

/** How sizes are shown and cut, and the seam allowance that a finished size lacks. */
export interface Cutting {
  style: Style;
  mark: Exact;
  seam: Exact;
}

/** A written size without the words that may stand beside it. */
const bareSize = (written: string): string =>
  written
    .replace(/\b((half|quarter).?squares?|triangles?|squares?|(un)?finished|cut)\b|[():]|,(?!\d)/gi, ' ')
    .trim();

const sizeOf = (
  written: string,
  words: string,
  { style, mark, seam }: Cutting,
): Pick<ListedPiece, 'width' | 'length' | 'between'> => {
  const plain = bareSize(written);
  const sides = splitSize(plain) ?? [plain, plain];
  const [width, length] = sides.map((side) => readLength(side, style)) as [Exact, Exact];
  const added = /\bfinished\b/i.test(words) ? seam.mul(exact(PATCHES[kindOf(words)].seams)) : ZERO;
  // What lies between two marks is cut on the upper one, and takes that much cloth.
  const cut = (side: Exact): Exact => toMark(side.add(added), mark);
  if (least(width, length, cut(width), cut(length)).lte(0))
    refuse(`${quoted(written)}: a size has to be more than 0. Write it like 3 1/2 or 3 1/2 x 6 1/2.`);
  const between = [width, length].filter((side) => added.equals(0) && !cut(side).equals(side));
  return { width: cut(width), length: cut(length), between };
};

const countOf = (written: string): number => {
  const bare = written.replace(/^[x×] ?| ?[x×]$/i, '');
  if (!/^\d{1,9}$/.test(bare))
    refuse(
      `${written ? `${quoted(written)} is not a number of pieces` : 'How many is missing'}. Write it like 12.`,
    );
  const count = Number(bare);
  return count > MOST_PIECES ? refuse('That is more than a million pieces. Write fewer, like 1000.') : count;
};

/** One line of the list; `sizeHead` is what the head says of sizes. */
const readLine = (cells: string[], columns: Columns, sizeHead: string, cutting: Cutting): ListedPiece => {
  const cell = (column: Column): string => cells[columns[column] ?? -1] ?? '';
  if (cells.length === 1) refuse('Put | between its parts, like A | square | 3 1/2 | 12.');
  const size = columns.size === undefined ? `${cell('width')} x ${cell('length')}` : cell('size');
  const piece = cell('piece');
  const words = `${piece} ${size} ${sizeHead}`;
  const count = countOf(cell('count'));
  const { each, words: cutUp } = PATCHES[kindOf(words)];
  const asSquares = /square/i.test(piece.replace(/(half|quarter).?square/gi, ''));
  return {
    fabric: cell('fabric'),
    piece: piece || 'piece',
    ...sizeOf(size, words, cutting),
    count: asSquares ? count : Math.ceil(count / each),
    cutUp,
    each,
    cutAs: cutUp && !asSquares ? `square for ${piece}` : piece || 'piece',
  };
};

/**
 * Reads a cut list. The head's words say which column is which, in any order; without a head the columns are fabric,
 * piece, cut size, how many. Sizes are cut sizes unless the line or the head says "finished"; half- and quarter-square
 * triangles are counted as triangles, or as squares where the piece is said to be one ("squares for half-square
 * triangles"). Throws a `Refusal` that names the line.
 */
export const readCutList = (list: unknown, cutting: Cutting): ListedPiece[] => {
  const lines = linesOf(list);
  const [head = []] = lines;
  const { columns, hasHead } = layoutOf(lines);
  const body = hasHead ? lines.slice(1) : lines;
  if (!body.length) refuse('The cut list is empty. Write a line like A | square | 3 1/2 | 12.');
  if (columns.size === undefined && (columns.width === undefined || columns.length === undefined))
    refuse('The cut list has no column for the cut size. Head one “Cut size”.');
  if (columns.count === undefined)
    refuse('The cut list has no column for the number of pieces. Head one “How many”.');
  if (body.length > MOST_LINES)
    refuse(
      `A cut list of more than ${MOST_LINES} lines is more than can be planned at once. Plan it in parts, like ${MOST_LINES / 2} lines each.`,
    );
  const sizeHead = hasHead
    ? `${head[columns.size ?? columns.width!]!} ${head[columns.length ?? columns.size!]!}`
    : '';
  const listed = body.map((cells, at) =>
    unlessRefused(
      () => readLine(cells, columns, sizeHead, cutting),
      ({ message }) => {
        const piece = cells[columns.piece ?? -1];
        return refuse(`Line ${at + 1}${piece ? `, ${piece}` : ''}: ${message}`);
      },
    ),
  );
  return listed.some(({ count }) => count)
    ? listed
    : refuse('The cut list asks for no piece at all. Write how many, like 12.');
};

/** The list with this unit at every size that names none; a line that is not yet a line of a list stays as it is. */
export const cutListInUnit = (list: string, unit: Units): string => {
  const lines = linesOf(list);
  if (!lines.some((line) => line.length > 1)) return list;
  const { columns } = layoutOf(lines);
  const sizes = [columns.size, columns.width, columns.length];
  const marked = (cell: string): string => {
    const plain = bareSize(cell);
    const inside = inUnit(plain, unit, true);
    return cell.includes(plain)
      ? cell.replace(plain, inside)
      : `${inside} ${cell.replace(/[\d/.,x×]+/g, '')}`;
  };
  return written(lines.map((line) => line.map((cell, at) => (sizes.includes(at) ? marked(cell) : cell))));
};
