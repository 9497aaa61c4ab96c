import { type Message } from '../../measure/message.js';
import { type Chart, type Flight } from './patch.js';
/** A cell as somebody wrote it. Its spans and the way that a goose flies may be in its text too: `B A B 2x1 down`. */
export interface WrittenCell {
    text: unknown;
    colspan?: unknown;
    rowspan?: unknown;
    goose?: unknown;
}
/** What can be wrong with a chart. */
export interface ChartSayings {
    emptyChart: undefined;
    /** Something is wrong with a cell: its row, and its place in that row. */
    inCell: {
        row: number;
        cell: number;
        says: Message;
    };
    /** A patch has a size, but no mark says which letters are its own. */
    marksNeeded: undefined;
    tooManyCells: {
        most: number;
    };
    tooManyFabrics: {
        most: number;
    };
    emptyCell: undefined;
    notPatch: {
        text: string;
    };
    notSpan: {
        text: string;
    };
    outside: {
        row: number;
    };
    overlaps: undefined;
    /** No patch covers this cell. */
    gap: {
        row: number;
        column: number;
    };
    halfNotSquare: undefined;
    quarterNotSquare: undefined;
    insideNotSquare: undefined;
    gooseNotTwoByOne: undefined;
    gooseWay: {
        text: string;
        ways: readonly Flight[];
    };
}
/** A cell as it is shown: its text, and how many cells of the table it covers. */
export interface GridCell {
    text: string;
    across: string;
    down: string;
}
/** The cells of a chart that is written as text, as they are written. */
export declare const gridCells: (text: string) => GridCell[][];
/** Rows of texts as one text: a line for each row, with | between the cells. */
export declare const writeCells: (rows: string[][]) => string;
/** The chart as text. */
export declare const writeChart: (chart: unknown) => string;
/** Reads a chart. Throws a `Refusal` that names the cell, if one cell is wrong. */
export declare const readChart: (chart: unknown) => Chart;
