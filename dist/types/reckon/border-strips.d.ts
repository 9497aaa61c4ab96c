import { type Exact } from '../measure/exact.js';
import type { Piece } from './border-lengths.js';
import type { Book } from './book.js';
import type { bordersFields } from './borders.js';
/** Pieces of one border that are cut to the same width; all sizes are those that are really cut. */
export interface Lot {
    width: Exact;
    pieces: {
        length: Exact;
        count: number;
    }[];
}
/**
 * A border's pieces by their cut width, in the sizes that the cut list gives. A mark may lie below a size, by less than
 * anybody can cut: then the size itself counts, so that cloth is never short of either.
 */
export declare const lotsOf: (pieces: Piece[], mark: Exact) => Lot[];
/** The cloth the strips are cut from, and the book they are reckoned in. */
export interface Cloth extends ReturnType<Book<typeof bordersFields>['cloth']> {
    book: Book<typeof bordersFields>;
}
export declare const count: <Key extends string>(things: Record<Key, number>[], key: Key) => number;
/** One way to cut a border. */
export interface BorderPlan<Length = string> {
    /** `joined`: strips across the cloth, joined into one length and cut up; `separate`: strips across the cloth, each piece
     * made on its own; `along`: parallel to the selvage, without joins. */
    plan: 'joined' | 'separate' | 'along';
    strips: number;
    joins: number;
    /** As bought, before the wash. */
    fabric: Length;
}
/** A plan with its rows' words: how the strips were counted, and the cloth they take. */
export interface WordedPlan extends BorderPlan<Exact> {
    how: string;
    fabricHow: string;
}
/** Every way to cut a border that this cloth allows: joined, separate, along. */
export declare const borderPlans: (lots: Lot[], { book, cloth, clothRow, kept }: Cloth) => WordedPlan[];
/**
 * The plan to use; undefined where there is none for this grain. Across the cloth it is the one with fewer strips (less
 * cloth, where strips have two widths), then with fewer joins; a tie goes to the joined one, where nothing has to be kept
 * apart.
 */
export declare const bestPlan: (plans: WordedPlan[], grain: string) => WordedPlan | undefined;
