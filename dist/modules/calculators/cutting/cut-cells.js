import { linesOf, layoutOf, sizeHeadOf, sidesIn } from './cut-list.js';
import { kindOf, isFinished, bareName } from './list-words.js';

/** What the cells of a row hold when a cut list is typed cell by cell, in order. */
const CELLS = ['fabric', 'piece', 'width', 'length', 'count', 'way'];
const KINDS = ['rectangle', 'half', 'quarter'];
const WAYS = KINDS.flatMap((kind) => [kind, `${kind}-finished`]);
/** How a way is written in a text, beside the size. These are codes, the same in every language. */
const WRITTEN = {
    rectangle: '',
    half: 'half-square',
    quarter: 'quarter-square',
};
const FINISHED = 'finished';
const HEAD = ['fabric', 'piece', 'size', 'count'].join(' | ');
const partsOf = (way) => ({
    kind: KINDS.find((kind) => way.startsWith(kind)) ?? 'rectangle',
    finished: way.endsWith('-finished'),
});
const wayOf = (words) => {
    const kind = kindOf(words);
    return isFinished(words) ? `${kind}-finished` : kind;
};
/** Whether nothing is written in a row. */
const isEmptyRow = (row) => CELLS.every((cell) => cell === 'way' || !row[cell]?.trim());
/** Whether a row lacks something that every piece has. */
const isUnfinishedRow = ({ width, count }) => !width?.trim() || !count?.trim();
/** Whether the first line of a list says what its columns are. */
const hasHead = (list) => layoutOf(linesOf(list)).hasHead;
/** A list as rows of cells. Undefined if its lines cannot be put in cells: then its text has to be corrected. */
const cutRows = (list) => {
    const lines = linesOf(list);
    const { columns, hasHead: isHeaded } = layoutOf(lines);
    const { size, width, length, count } = columns;
    const hasSize = size !== undefined || (width !== undefined && length !== undefined);
    const body = isHeaded ? lines.slice(1) : lines;
    if (!hasSize || count === undefined || body.some((line) => line.length < 2))
        return undefined;
    const head = isHeaded ? sizeHeadOf(lines[0] ?? [], columns) : '';
    return body.map((cells) => {
        const cell = (column) => cells[columns[column] ?? -1] ?? '';
        const sizes = size === undefined ? [cell('width'), cell('length')] : [cell('size')];
        const [wide = '', long = ''] = sizes.length > 1 ? sizes.map((side) => sidesIn(side)[0]) : sidesIn(cell('size'));
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
const asNamed = (row) => {
    const { piece = '', way = '' } = row;
    const { kind, finished } = partsOf(way);
    const named = kindOf(piece);
    const now = named === 'rectangle' ? kind : named;
    return { ...row, way: finished || isFinished(piece) ? `${now}-finished` : now };
};
/** The row, cut in the way that somebody chose. A name that says another way loses the words that say so. */
const inWay = (row, way) => {
    const named = (piece) => asNamed({ piece, way }).way === way;
    const { piece = '' } = row;
    const bare = named(piece) ? piece : bareName(piece);
    return { ...row, piece: named(bare) ? bare : '', way };
};
/** One row as a line of text. Bars in the first cell stay, so that a whole line can be typed there. */
const lineOf = (row) => {
    const plain = (cell) => (row[cell] ?? '').replace(/\s+/g, ' ').trim();
    const whole = (cell) => plain(cell).replaceAll('|', '/');
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
const writeCutRows = (rows) => {
    const text = rows
        .filter((row) => !isEmptyRow(row))
        .map(lineOf)
        .join('\n');
    return hasHead(text) ? `${HEAD}\n${text}` : text;
};

export { CELLS, WAYS, asNamed, cutRows, hasHead, inWay, isEmptyRow, isUnfinishedRow, writeCutRows };
