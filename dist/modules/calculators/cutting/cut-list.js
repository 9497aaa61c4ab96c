import { textOf } from '../../ledger/field.js';
import { readLength } from '../../ledger/lengths.js';
import { refuse, unlessRefused } from '../../ledger/refusal.js';
import { exact, ZERO, least, toMark } from '../../measure/exact.js';
import { sayings } from '../../measure/message.js';
import { splitSize, inUnit } from '../../measure/parse.js';
import { MOST_PIECES } from '../../planner/grid.js';
import { PATCHES } from '../../trade/patches.js';
import { bareSize, kindOf, isOfSquares, HEADS, isFinished } from './list-words.js';

const say = sayings();
const MOST_LINES = 500;
/** The signs that separate the cells of a line. The first of these that a line has counts. */
const MARKS = ['\t', '|', ';'];
/** Lines of cells: a table's rows, or text with tabs between cells, or |, or semicolons. */
const linesOf = (list) => {
    const lines = Array.isArray(list)
        ? list.map((line) => (Array.isArray(line) ? line.map(textOf) : [textOf(line)]))
        : textOf(list)
            .split(/\r?\n/)
            .map((line) => line.trimEnd().replace(/;$/, '').trimEnd())
            .map((line) => line.split(MARKS.find((mark) => line.includes(mark)) ?? '\n'));
    return lines
        .map((line) => line.map((cell) => cell.replace(/\s+/g, ' ').trim()))
        .filter((line) => line.some(Boolean));
};
const written = (lines) => lines.map((line) => line.map((cell) => cell.replaceAll('|', '/')).join(' | ')).join('\n');
/** The list as text: a line for each piece, with | between the cells. */
const writeCutList = (list) => written(linesOf(list));
/** Finds the columns by the words in the head. Each kind of column counts once. */
const columnsOf = (head) => {
    const columns = {};
    const taken = new Set();
    for (const [name, words] of HEADS) {
        const at = head.findIndex((cell, at) => !taken.has(at) && words.test(cell));
        if (at < 0 || columns[name] !== undefined)
            continue;
        columns[name] = at;
        taken.add(at);
    }
    return columns;
};
const USUAL = { fabric: 0, piece: 1, size: 2, count: 3 };
/** The columns of a list, and whether its first line is the head. */
const layoutOf = (lines) => {
    const [head = []] = lines;
    const named = columnsOf(head);
    const hasHead = Object.keys(named).length > 1 && !head.some((cell) => /^([x×] ?)?\d/i.test(cell));
    return { columns: hasHead ? named : USUAL, hasHead };
};
/** Reads one cell. If it is wrong, the problem says which. */
const inColumn = (column, work) => unlessRefused(work, ({ problem: says }) => refuse(say('inColumn', { column, says })));
/** The two sides that somebody wrote as one size. A square may have only one, and one that is still to be written is empty. */
const sidesIn = (size) => {
    const plain = bareSize(size);
    return splitSize(plain) ?? (/^[x×]/i.test(plain) ? ['', plain.slice(1).trim()] : [plain]);
};
const sizeOf = (written, words, { style, mark, seam }) => {
    const [first, second = first] = sidesIn(written);
    const width = inColumn('width', () => readLength(first, style));
    const length = inColumn('length', () => readLength(second, style));
    const added = isFinished(words) ? seam.mul(exact(PATCHES[kindOf(words)].seams)) : ZERO;
    // A size between two marks is cut on the upper one, and takes that much cloth.
    const cut = (side) => toMark(side.add(added), mark);
    const wide = inColumn('width', () => above0(width, cut(width), written));
    const long = inColumn('length', () => above0(length, cut(length), written));
    const between = [width, length].filter((side) => added.equals(0) && !cut(side).equals(side));
    return { width: wide, length: long, between };
};
/** The side as it is cut, if there is anything to cut. */
const above0 = (side, cut, text) => least(side, cut).gt(0) ? cut : refuse(say('sizeOfZero', { text }));
const countOf = (written) => {
    const bare = written.replace(/^[x×] ?| ?[x×]$/i, '');
    if (!/^\d{1,9}$/.test(bare))
        refuse(say('noCount', { text: written }));
    const count = Number(bare);
    return count > MOST_PIECES ? refuse(say('countTooLarge')) : count;
};
/** Makes one message object for each name, so that a drawing can compare pieces by it. */
class Names {
    #pieces = new Map();
    #squares = new Map();
    piece(name) {
        return madeOnce(this.#pieces, name, () => say('piece', { name }));
    }
    squareFor(name) {
        return madeOnce(this.#squares, name, () => say('squareFor', { piece: this.piece(name) }));
    }
}
const madeOnce = (made, key, make) => {
    const found = made.get(key) ?? make();
    made.set(key, found);
    return found;
};
/** One line of the list. */
const readLine = (cells, { columns, sizeHead, cutting, names }) => {
    const cell = (column) => cells[columns[column] ?? -1] ?? '';
    if (cells.length === 1)
        refuse(say('cellsTogether'));
    const size = columns.size === undefined ? `${cell('width')} x ${cell('length')}` : cell('size');
    const name = cell('piece');
    const words = `${name} ${size} ${sizeHead}`;
    const count = inColumn('count', () => countOf(cell('count')));
    const kind = kindOf(words);
    const asSquares = isOfSquares(name);
    return {
        fabric: cell('fabric'),
        piece: names.piece(name),
        ...sizeOf(size, words, cutting),
        count: asSquares ? count : Math.ceil(count / PATCHES[kind].each),
        kind,
        cutAs: kind === 'rectangle' || asSquares ? names.piece(name) : names.squareFor(name),
    };
};
/** Why a list cannot be read as a whole, or undefined if its lines can be read. */
const problemOf = (lines, { size, width, length, count }) => {
    if (!lines.length)
        return say('emptyList');
    if (size === undefined && (width === undefined || length === undefined))
        return say('noSizeColumn');
    if (count === undefined)
        return say('noCountColumn');
    return lines.length > MOST_LINES ? say('tooManyLines', { most: MOST_LINES }) : undefined;
};
/** What the head says of sizes. */
const sizeHeadOf = (head, { size, width, length }) => `${head[size ?? width ?? -1] ?? ''} ${head[length ?? size ?? -1] ?? ''}`;
/**
 * Reads a cut list. The words in the head say what each column is, in any order. Without a head the columns are fabric, piece, cut
 * size, how many. A size is a cut size, unless the line or the head says "finished". Half- and quarter-square triangles are
 * counted as triangles. If the piece is called a square ("squares for half-square triangles"), they are counted as squares.
 * Throws a `Refusal` that names the line.
 */
const readCutList = (list, cutting) => {
    const lines = linesOf(list);
    const [head = []] = lines;
    const { columns, hasHead } = layoutOf(lines);
    const body = hasHead ? lines.slice(1) : lines;
    const problem = problemOf(body, columns);
    if (problem)
        return refuse(problem);
    const common = {
        columns,
        sizeHead: hasHead ? sizeHeadOf(head, columns) : '',
        cutting,
        names: new Names(),
    };
    const listed = body.map((cells, at) => unlessRefused(() => readLine(cells, common), ({ problem: says }) => refuse(say('inLine', { number: at + 1, piece: cells[columns.piece ?? -1] ?? '', says }))));
    return listed.some(({ count }) => count) ? listed : refuse(say('noPiece'));
};
/** Adds this unit to every size that has none. A line that is not complete yet stays as it is. */
const cutListInUnit = (list, unit) => {
    const lines = linesOf(list);
    if (!lines.some((line) => line.length > 1))
        return list;
    const { columns } = layoutOf(lines);
    const sizes = [columns.size, columns.width, columns.length];
    const marked = (cell) => {
        const plain = bareSize(cell);
        const inside = inUnit(plain, unit, true);
        return cell.includes(plain)
            ? cell.replace(plain, inside)
            : `${inside} ${cell.replace(/[\d/.,x×]+/g, '')}`;
    };
    return written(lines.map((line) => line.map((cell, at) => (sizes.includes(at) ? marked(cell) : cell))));
};

export { cutListInUnit, layoutOf, linesOf, readCutList, sidesIn, sizeHeadOf, writeCutList };
