import { type Exact } from '../measure/exact.js';
import type { Book } from './book.js';
import { type Field, type Fields } from './fields.js';
/** The finished quilt's two sides. */
export declare const quiltFields: {
    width: Field<import("fraction.js").default>;
    length: Field<import("fraction.js").default>;
};
/** What is added round the quilt for its back and its batting. */
export declare const overageField: Field<import("fraction.js").default>;
/** Lengths sewn or butted side by side; nobody joins more, and a page could not draw them. */
export declare const MOST_JOINED = 100;
/** `1 join`, `2 joins`. */
export declare const plural: (count: number, word: string) => string;
/** A rectangle's two sides. */
export interface Size<Length = string> {
    width: Length;
    length: Length;
}
/** A size's sides across the cloth and along it, where its length lies along the cloth, or is turned. */
export declare const facing: <Length>({ width, length }: Size<Length>, turned: boolean) => [across: Length, along: Length];
/** The ids of the rows that {@link withOverage} adds. */
export declare const NEED_ROWS: Size;
/** The rows that add the overage to a quilt, for its `Backing` or its `Batting`; gives back the size needed. */
export declare const withOverage: (book: Book<Fields & {
    overage: Field<Exact>;
}>, name: string, quilt: Size<Exact>, rows?: Size) => Size<Exact>;
/** The cloth as it lies in the shop. */
export declare const clothFields: {
    fabricWidth: Field<import("fraction.js").default>;
};
/** How strips are sewn end to end. */
export declare const joinField: Field<string>;
/** How the cloth is washed, sold and priced. */
export declare const shopFields: {
    shrinkage: Field<import("fraction.js").default>;
    increment: Field<import("../measure/shop.js").Step>;
    price: Field<import("fraction.js").default | undefined>;
    currency: Field<string | undefined>;
};
/** What the reader's ruler marks; cut sizes fall on it. */
export declare const markField: {
    mark: Field<import("fraction.js").default>;
};
