import { type Exact } from '../../measure/exact.js';
import type { Style } from '../../measure/format.js';
import { type Message } from '../../measure/message.js';
import type { Units } from '../../measure/units.js';
import { type PatchKind } from './list-words.js';
/** What a cut list's pieces are called, and what is wrong with a list. */
export interface CutListSayings {
    /** A piece as its author calls it; empty where nothing does. */
    piece: {
        name: string;
    };
    /** What is cut from a strip, where triangles are cut from it. */
    squareFor: {
        piece: Message;
    };
    inLine: {
        number: number;
        piece: string;
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
/** One line of a cut list, ready to be cut: a triangle is the square it comes from. */
export interface ListedPiece {
    /** The fabric's letter or name; empty where the list names none. */
    fabric: string;
    piece: Message;
    /** Cut sizes in inches. */
    width: Exact;
    length: Exact;
    /** Sides that were written as they are cut, and lie between the ruler's marks. */
    between: Exact[];
    /** How many squares or rectangles to cut. */
    count: number;
    kind: PatchKind;
    /** What is cut from a strip. Pieces that are called the same have one and the same message. */
    cutAs: Message;
}
/** How sizes are read and cut, and the seam allowance that a finished size lacks. */
export interface Cutting {
    style: Style;
    mark: Exact;
    seam: Exact;
}
/** The list as text, a line each with | between its cells. */
export declare const writeCutList: (list: unknown) => string;
/**
 * Reads a cut list. The head's words say which column is which, in any order; without a head the columns are fabric,
 * piece, cut size, how many. Sizes are cut sizes unless the line or the head says "finished"; half- and quarter-square
 * triangles are counted as triangles, or as squares where the piece is said to be one ("squares for half-square
 * triangles"). Throws a `Refusal` that names the line.
 */
export declare const readCutList: (list: unknown, cutting: Cutting) => ListedPiece[];
/** The list with this unit at every size that names none; a line that is not yet a line of a list stays as it is. */
export declare const cutListInUnit: (list: string, unit: Units) => string;
