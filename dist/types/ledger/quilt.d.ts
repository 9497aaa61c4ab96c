import { type Exact } from '../measure/exact.js';
import type { Field } from './field.js';
import type { Ledger } from './ledger.js';
import type { Quantity } from './quantity.js';
/** The finished quilt's two sides. */
export declare const quiltFields: {
    width: Field<import("fraction.js").default>;
    length: Field<import("fraction.js").default>;
};
/** How many blocks there are of a kind. One that takes what others leave of a top may be left with none. */
export declare const blocksField: Field<number>;
/** What is added round the quilt for its back and its batting. */
export declare const overageField: Field<import("fraction.js").default>;
/** The most lengths side by side. Nobody joins more, and a page could not draw them. */
export declare const MOST_JOINED = 100;
/** A rectangle's two sides. */
export interface Size<Length = Exact> {
    width: Length;
    length: Length;
}
/** The same size with its short side first, for a piece that may lie either way round. */
export declare const shortFirst: ({ width, length }: Size) => Size;
/** The exact sides of a size. */
export declare const sidesOf: ({ width, length }: Size<Quantity>) => Size;
/** The sides of a size across the cloth and along it. Usually its length lies along the cloth. */
export declare const facing: <Length>({ width, length }: Size<Length>, turned: boolean) => [across: Length, along: Length];
export interface OverageSayings {
    overageTooLarge: undefined;
}
/** Adds the rows for a quilt with its overage, for a backing or batting. Gives back the size that is needed. */
export declare const withOverage: (ledger: Ledger<{
    overage: Field<Exact>;
}, "needWidth" | "needLength">, quilt: Size<Quantity>) => Size<Quantity>;
