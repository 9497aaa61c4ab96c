import { type Exact } from '../../measure/exact.js';
import type { Style } from '../../measure/format.js';
import { type Message } from '../../measure/message.js';
import type { Units } from '../../measure/units.js';
import type { PlannedSayings } from './plan-shape.js';
import { type Column, type PatchKind } from './list-words.js';
/** The names of pieces, and what can be wrong with a cut list. */
export interface CutListSayings extends Pick<PlannedSayings, 'squareFor'> {
    /** A piece by the name that its author wrote, or an empty name. */
    piece: {
        name: string;
    };
    inLine: {
        number: number;
        piece: string;
        says: Message;
    };
    /** The same, and in which of its columns. A square's only side counts as its width. */
    inColumn: {
        column: 'width' | 'length' | 'count';
        says: Message;
    };
    cellsTogether: undefined;
    sizeOfZero: {
        text: string;
    };
    noCount: {
        text: string;
    };
    countTooLarge: undefined;
    emptyList: undefined;
    noSizeColumn: undefined;
    noCountColumn: undefined;
    tooManyLines: {
        most: number;
    };
    noPiece: undefined;
}
/** One line of a cut list, ready to be cut. In place of triangles it has the squares that they come from. */
export interface ListedPiece {
    /** The letter or name of the fabric, or empty if the list names none. */
    fabric: string;
    piece: Message;
    /** Cut sizes in inches. */
    width: Exact;
    length: Exact;
    /** Cut sizes that somebody wrote between two marks of the ruler. */
    between: Exact[];
    /** How many squares or rectangles to cut. */
    count: number;
    kind: PatchKind;
    /** What a strip gives. Pieces with the same name share one message object. */
    cutAs: Message;
}
/** How to read and cut sizes, and the seam allowance that a finished size needs. */
export interface Cutting {
    style: Style;
    mark: Exact;
    seam: Exact;
}
/** Lines of cells: a table's rows, or text with tabs between cells, or |, or semicolons. */
export declare const linesOf: (list: unknown) => string[][];
/** The list as text: a line for each piece, with | between the cells. */
export declare const writeCutList: (list: unknown) => string;
/** What each column holds, by its place. */
export type Columns = Partial<Record<Column, number>>;
/** The columns of a list, and whether its first line is the head. */
export declare const layoutOf: (lines: string[][]) => {
    columns: Columns;
    hasHead: boolean;
};
/** The two sides that somebody wrote as one size. A square may have only one, and one that is still to be written is empty. */
export declare const sidesIn: (size: string) => [first: string, second?: string];
/** What the head says of sizes. */
export declare const sizeHeadOf: (head: string[], { size, width, length }: Columns) => string;
/**
 * Reads a cut list. The words in the head say what each column is, in any order. Without a head the columns are fabric, piece, cut
 * size, how many. A size is a cut size, unless the line or the head says "finished". Half- and quarter-square triangles are
 * counted as triangles. If the piece is called a square ("squares for half-square triangles"), they are counted as squares.
 * Throws a `Refusal` that names the line.
 */
export declare const readCutList: (list: unknown, cutting: Cutting) => ListedPiece[];
/** Adds this unit to every size that has none. A line that is not complete yet stays as it is. */
export declare const cutListInUnit: (list: string, unit: Units) => string;
