import { type Exact } from '../measure/exact.js';
import type { Book } from './book.js';
import { type Fields } from './fields.js';
/** A border's finished width at two opposite sides, and the row it is from. */
export interface Width {
    value: Exact;
    from: string;
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
/** One side of the top as it stands: what it measures finished, how that is written, and the rows it is from. */
interface Side {
    value: Exact;
    words: string;
    from: string[];
}
/** The top while borders are sewn on, one after the other; each puts its rows into the book. */
export declare class GrowingTop {
    #private;
    readonly book: Pick<Book<Fields>, 'n' | 'l' | 'row' | 'measurable'>;
    readonly seam: Exact;
    readonly mark: Exact;
    width: Side;
    length: Side;
    constructor(book: Pick<Book<Fields>, 'n' | 'l' | 'row' | 'measurable'>, seam: Exact, mark: Exact, width: Exact, length: Exact);
    /** What to cut for a border, by its number from the inside; from then on the top has it. */
    sew(number: number, corners: string, widths: {
        side: Width;
        end: Width;
    }): Piece[];
    /** How wide a border of its own width at the sides, and at top and bottom, makes the wanted size; can be less than 0. */
    lacking([width, length]: [Exact, Exact]): {
        side: Width;
        end: Width;
    };
}
export {};
