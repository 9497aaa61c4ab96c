import { type Exact } from '../measure/exact.js';
import type { Style } from '../measure/format.js';
import type { Units } from '../measure/units.js';
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
/** The list as text, a line each with | between its cells. */
export declare const writeCutList: (list: unknown) => string;
/** How sizes are shown and cut, and the seam allowance that a finished size lacks. */
export interface Cutting {
    style: Style;
    mark: Exact;
    seam: Exact;
}
/**
 * Reads a cut list. The head's words say which column is which, in any order; without a head the columns are fabric,
 * piece, cut size, how many. Sizes are cut sizes unless the line or the head says "finished"; half- and quarter-square
 * triangles are counted as triangles, or as squares where the piece is said to be one ("squares for half-square
 * triangles"). Throws a `Refusal` that names the line.
 */
export declare const readCutList: (list: unknown, cutting: Cutting) => ListedPiece[];
/** The list with this unit at every size that names none; a line that is not yet a line of a list stays as it is. */
export declare const cutListInUnit: (list: string, unit: Units) => string;
