import { textOf } from '../../ledger/field.js';
import { refuse, unlessRefused } from '../../ledger/refusal.js';
import { sayings } from '../../measure/message.js';
import { FLIGHTS, patchOf } from './patch.js';

const say = sayings();
/** The most cells each way, and the most fabrics: nobody could tell more of them apart. */
const MOST_CELLS = 24;
const MOST_FABRICS = 30;
/** A row that patches above it cover whole. */
const COVERED = '-';
/** Cells without a mark between them: `A B in A C/D` has three. */
const CELLS = /(?:\S+ in )?\S+/giu;
/** The size of a patch, or the way that a goose flies. Without marks, nobody could say which letters they belong to. */
const NEEDS_MARKS = / (\d+x\d+|up|down|left|right)( |$)/iu;
/** Text with one kind of each sign, single spaces, and no marks that nobody sees. */
const plain = (text) => text
    .normalize('NFC')
    .replace(/\p{Cf}/gu, '')
    .replace(/[⁄∕／]/gu, '/')
    .replace(/[∖＼]/gu, '\\')
    .replace(/\s+/gu, ' ')
    .replace(/ ?([/\\]) ?/gu, '$1')
    .replace(/(\d) ?[x×] ?(\d)/gu, '$1x$2')
    .trim();
/** The rows of a text, and whether marks divide them into cells. */
const linesIn = (text) => {
    const lines = text
        .split(/[;\r\n]/u)
        .map(plain)
        .filter(Boolean);
    return { lines, isMarked: lines.some((line) => line.includes('|')) };
};
const lacksMarks = ({ lines, isMarked }) => !isMarked && lines.some((line) => NEEDS_MARKS.test(line));
/** The cells of a line. */
const cellsIn = (line, isMarked) => {
    if (line === COVERED)
        return [];
    if (!isMarked)
        return line.match(CELLS) ?? [];
    // A table in plain text may have marks at both ends.
    return line.replace(/^\|/, '').replace(/\|$/, '').split('|').map(plain);
};
const isCell = (cell) => typeof cell === 'object' && cell !== null && 'text' in cell;
/** Rows of cells: a table's, or lists of texts, or text with an end of line or a semicolon after each row. */
const rowsOf = (chart) => {
    if (Array.isArray(chart))
        // A list may have holes, and `map` would leave them out.
        return Array.from(chart, (row) => Array.from(Array.isArray(row) ? row : [row], (cell) => (isCell(cell) ? cell : { text: cell })));
    const { lines, isMarked } = linesIn(textOf(chart));
    return lines.map((line) => cellsIn(line, isMarked).map((text) => ({ text })));
};
/** A cell's text, its spans and the way its goose flies, as texts. */
const partsOf = ({ text, colspan, rowspan, goose }) => {
    const [, words = '', across, down, flies] = /^(.*?)(?: ?\(?(\d{1,5})x(\d{1,5})\)?)?(?: (up|down|left|right))?$/iu.exec(plain(textOf(text))) ?? [];
    return {
        words,
        across: textOf(colspan).trim() || across || '1',
        down: textOf(rowspan).trim() || down || '1',
        flies: (textOf(goose).trim() || flies || '').toLowerCase(),
    };
};
const spanOf = (text) => {
    const span = /^\d{1,5}$/.test(text) ? Number(text) : 0;
    return span > 0 ? span : refuse(say('notSpan', { text }));
};
/** A cell as text, with its spans and the way its goose flies. */
const written = (cell) => {
    const { words, across, down, flies } = partsOf(cell);
    return [words.replaceAll('|', '/'), across === '1' && down === '1' ? '' : `${across}x${down}`, flies]
        .filter(Boolean)
        .join(' ');
};
/** The cells of a chart that is written as text, as they are written. */
const gridCells = (text) => rowsOf(text).map((row) => row.map((cell) => {
    const { across, down } = partsOf(cell);
    return { text: textOf(cell.text), across, down };
}));
/** Whether a row has to have marks at both ends: an empty cell there, or one patch with spaces, would be lost without them. */
const needsEnds = (cells) => cells[0] === '' || cells.at(-1) === '' || (cells.length === 1 && !!cells[0]?.includes(' '));
/** Rows of texts as one text: a line for each row, with | between the cells. */
const writeCells = (rows) => rows
    .map((cells) => (needsEnds(cells) ? `| ${cells.join(' | ')} |` : cells.join(' | ') || COVERED))
    .join('\n');
/** The chart as text. */
const writeChart = (chart) => {
    const text = textOf(chart);
    return !Array.isArray(chart) && lacksMarks(linesIn(text))
        ? text
        : writeCells(rowsOf(chart).map((row) => row.map(written)));
};
/** Puts patches into their places, like the cells of a table: each goes to the first cell of its row that is still free. */
class Grid {
    #taken;
    #columns;
    constructor(rows) {
        this.rows = rows;
        this.patches = [];
        this.#columns = 0;
        if (rows > MOST_CELLS)
            refuse(say('tooManyCells', { most: MOST_CELLS }));
        this.#taken = Array.from({ length: rows }, () => []);
    }
    put(patch, row, across, down) {
        const taken = this.#taken[row] ?? [];
        let column = 0;
        while (taken[column])
            column += 1;
        if (column + across > MOST_CELLS)
            refuse(say('tooManyCells', { most: MOST_CELLS }));
        if (row + down > this.rows)
            refuse(say('outside', { row: row + down }));
        for (const cells of this.#taken.slice(row, row + down))
            for (let at = column; at < column + across; at += 1) {
                if (cells[at])
                    refuse(say('overlaps'));
                cells[at] = true;
            }
        this.#columns = Math.max(this.#columns, column + across);
        this.patches.push({ ...patch, column, row, across, down });
    }
    /** The whole chart. Refuses one with a gap. */
    get chart() {
        for (const [row, cells] of this.#taken.entries())
            for (let column = 0; column < this.#columns; column += 1)
                if (!cells[column])
                    refuse(say('gap', { row: row + 1, column: column + 1 }));
        return { columns: this.#columns, rows: this.rows, patches: this.patches };
    }
}
/** How wide a patch is for its height, on a square block of so many cells. */
const isAsWide = ({ across, down }, { columns, rows }, times) => across * rows === times * down * columns;
const NOT_SQUARE = { half: 'halfNotSquare', quarter: 'quarterNotSquare', inside: 'insideNotSquare' };
/** Refuses a patch that its cells do not fit, and turns a goose. */
const fitted = (patch, written, chart) => {
    const { kind } = patch;
    if (kind === 'plain')
        return patch;
    if (kind !== 'goose')
        return isAsWide(patch, chart, 1) ? patch : refuse(say(NOT_SQUARE[kind]));
    const isWide = isAsWide(patch, chart, 2);
    if (!isWide && !isAsWide(patch, chart, 1 / 2))
        refuse(say('gooseNotTwoByOne'));
    const ways = isWide ? FLIGHTS.slice(0, 2) : FLIGHTS.slice(2);
    const text = isWide ? written || 'up' : written;
    const flies = ways.find((way) => way === text) ?? refuse(say('gooseWay', { text, ways }));
    return { ...patch, flies };
};
/** The rows of a chart. A text needs no lines for rows that its last patches cover. */
const completed = (rows, isText) => {
    if (!isText)
        return rows;
    let count = rows.length;
    for (const [at, row] of rows.entries())
        for (const cell of row)
            count = Math.max(count, at + Number(partsOf(cell).down));
    count = Math.min(count, MOST_CELLS + 1);
    return Array.from({ length: count }, (_, at) => rows[at] ?? []);
};
/** Reads a chart. Throws a `Refusal` that names the cell, if one cell is wrong. */
const readChart = (chart) => {
    const isText = !Array.isArray(chart);
    if (isText && lacksMarks(linesIn(textOf(chart))))
        refuse(say('marksNeeded'));
    const rows = completed(rowsOf(chart), isText);
    if (!rows.some((row) => row.length))
        refuse(say('emptyChart'));
    const grid = new Grid(rows.length);
    const ways = [];
    const places = [];
    const inCell = ([row, cell], work) => unlessRefused(work, ({ problem: says }) => refuse(say('inCell', { row, cell, says })));
    for (const [row, cells] of rows.entries())
        for (const [at, cell] of cells.entries())
            inCell([row + 1, at + 1], () => {
                const { words, across, down, flies } = partsOf(cell);
                if (!words)
                    refuse(say('emptyCell'));
                const patch = patchOf(words) ?? refuse(say('notPatch', { text: words }));
                grid.put(patch, row, spanOf(across), spanOf(down));
                ways.push(flies);
                places.push([row + 1, at + 1]);
            });
    const { chart: whole } = grid;
    const letters = new Set(whole.patches.flatMap(({ letters }) => letters));
    if (letters.size > MOST_FABRICS)
        refuse(say('tooManyFabrics', { most: MOST_FABRICS }));
    const patches = whole.patches.map((patch, at) => inCell(places[at] ?? [1, 1], () => fitted(patch, ways[at] ?? '', whole)));
    return { ...whole, patches };
};

export { gridCells, readChart, writeCells, writeChart };
