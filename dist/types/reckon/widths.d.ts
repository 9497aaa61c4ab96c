import { type Exact } from '../measure/exact.js';
import type { Book } from './book.js';
import { type Field, type Fields } from './fields.js';
/** The cloth of one fabric: its usable width, once washed, and the same as sold. */
export interface OwnCloth<Length = string> {
    width: Length;
    sold: Length;
}
/** The cloth of a fabric that says its own width; any other is as wide as the book says. `of` it a wrong width is said. */
export declare const ownCloth: (book: Book<Fields & {
    fabricWidth: Field<Exact>;
}>, { cloth, kept }: {
    cloth: Exact;
    kept: Exact;
}, own: unknown, of: string) => OwnCloth<Exact>;
/** The cloth of each part in turn, as `fabricWidths` has them; the last is that of all further parts. */
export declare const ownCloths: (book: Book<Fields & {
    fabricWidth: Field<Exact>;
}>, cloth: {
    cloth: Exact;
    kept: Exact;
}) => ((at: number) => OwnCloth<Exact>);
