import { layoutOf, linesOf, sidesIn, sizeHeadOf } from './cut-list.js';
import { bareName, isFinished, kindOf, type Column, type PatchKind } from './list-words.js';

/** What the cells of a row hold when a cut list is typed cell by cell, in order. */
export const CELLS = ['fabric', 'piece', 'width', 'length', 'count', 'way'] as const;

export type CutCell = (typeof CELLS)[number];

/** How a piece is cut: its kind, and whether its size is the finished one. */
export type CutWay = PatchKind | `${PatchKind}-finished`;

const KINDS: PatchKind[] = ['rectangle', 'half', 'quarter'];

export const WAYS: CutWay[] = KINDS.flatMap((kind): CutWay[] => [kind, `${kind}-finished`]);

/** A row of cells. A missing one is empty. */
export type CutRow = Partial<Record<CutCell, string>>;

/** How a way is written in a text, beside the size. These are codes, the same in every language. */
const WRITTEN: Record<PatchKind, string> = {
  rectangle: '',
  half: 'half-square',
  quarter: 'quarter-square',
};
const FINISHED = 'finished';
const HEAD = ['fabric', 'piece', 'size', 'count'].join(' | ');

const partsOf = (way: string): { kind: PatchKind; finished: boolean } => ({
  kind: KINDS.find((kind) => way.startsWith(kind)) ?? 'rectangle',
  finished: way.endsWith('-finished'),
});

const wayOf = (words: string): CutWay => {
  const kind = kindOf(words);
  return isFinished(words) ? `${kind}-finished` : kind;
};

/** Whether nothing is written in a row. */
export const isEmptyRow = (row: CutRow): boolean =>
  CELLS.every((cell) => cell === 'way' || !row[cell]?.trim());

/** Whether a row lacks something that every piece has. */
export const isUnfinishedRow = ({ width, count }: CutRow): boolean => !width?.trim() || !count?.trim();

/** Whether the first line of a list says what its columns are. */
export const hasHead = (list: string): boolean => layoutOf(linesOf(list)).hasHead;

/** A list as rows of cells. Undefined if its lines cannot be put in cells: then its text has to be corrected. */
export const cutRows = (list: unknown): CutRow[] | undefined => {
  const lines = linesOf(list);
  const { columns, hasHead: isHeaded } = layoutOf(lines);
  const { size, width, length, count } = columns;
  const hasSize = size !== undefined || (width !== undefined && length !== undefined);
  const body = isHeaded ? lines.slice(1) : lines;
  if (!hasSize || count === undefined || body.some((line) => line.length < 2)) return undefined;
  const head = isHeaded ? sizeHeadOf(lines[0] ?? [], columns) : '';
  return body.map((cells): CutRow => {
    const cell = (column: Column): string => cells[columns[column] ?? -1] ?? '';
    const sizes = size === undefined ? [cell('width'), cell('length')] : [cell('size')];
    const [wide = '', long = ''] =
      sizes.length > 1 ? sizes.map((side) => sidesIn(side)[0]) : sidesIn(cell('size'));
    return {
      fabric: cell('fabric'),
      piece: cell('piece'),
      width: wide,
      length: long,
      count: cell('count'),
      way: wayOf(`${cell('piece')} ${sizes.join(' ')} ${head}`),
    };
  });
};

/** The row, cut in the way that its name says, if it says one. */
export const asNamed = (row: CutRow): CutRow => {
  const { piece = '', way = '' } = row;
  const { kind, finished } = partsOf(way);
  const named = kindOf(piece);
  const now = named === 'rectangle' ? kind : named;
  return { ...row, way: finished || isFinished(piece) ? `${now}-finished` : now };
};

/** The row, cut in the way that somebody chose. A name that says another way loses the words that say so. */
export const inWay = (row: CutRow, way: string): CutRow => {
  const named = (piece: string): boolean => asNamed({ piece, way }).way === way;
  const { piece = '' } = row;
  const bare = named(piece) ? piece : bareName(piece);
  return { ...row, piece: named(bare) ? bare : '', way };
};

/** One row as a line of text. Bars in the first cell stay, so that a whole line can be typed there. */
const lineOf = (row: CutRow): string => {
  const plain = (cell: CutCell): string => (row[cell] ?? '').replace(/\s+/g, ' ').trim();
  const whole = (cell: CutCell): string => plain(cell).replaceAll('|', '/');
  const { kind, finished } = partsOf(row.way ?? '');
  const name = whole('piece');
  const size = [
    whole('width'),
    whole('length') && `x ${whole('length')}`,
    kindOf(name) === kind ? '' : WRITTEN[kind],
    finished && !isFinished(name) ? FINISHED : '',
  ];
  return [plain('fabric'), name, size.filter(Boolean).join(' '), whole('count')].join(' | ');
};

/** Rows of cells as text: a line for each piece, without the empty ones. A first line that looks like a head has one above it. */
export const writeCutRows = (rows: CutRow[]): string => {
  const text = rows
    .filter((row) => !isEmptyRow(row))
    .map(lineOf)
    .join('\n');
  return hasHead(text) ? `${HEAD}\n${text}` : text;
};
