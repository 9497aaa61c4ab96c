import type { Exact } from '../measure/exact.js';
import type { Book } from './book.js';
import type { bordersFields } from './borders.js';
/** A length, and how a row names it: `{width} + 2 × {borders 0}`. */
export interface Named {
    value: Exact;
    words: string;
}
/** A border's finished widths: of its sides, and of top and bottom (`end`). */
export interface Widths {
    side: Named;
    end: Named;
}
/** Equal pieces of one border, in exact cut sizes. */
export interface Piece {
    piece: 'side' | 'end' | 'corner';
    count: number;
    length: Exact;
    width: Exact;
    /** The rows that the sizes are from. */
    from: string[];
}
/** The top while borders are sewn on, one after the other; each puts its rows into the book. */
export declare class GrowingTop {
    readonly book: Book<typeof bordersFields>;
    width: Named;
    length: Named;
    constructor(book: Book<typeof bordersFields>);
    /**
     * What to cut for a border, by its number from the inside; from then on the top has it. A cut width that was typed over
     * makes it as wide as that finishes.
     */
    sew(number: number, corners: string, wanted: Widths): {
        pieces: Piece[];
    } & Widths;
    /** How wide a border of its own width at the sides, and at top and bottom, makes the wanted size; can be less than 0. */
    lacking([width, length]: [Exact, Exact]): Widths;
}
