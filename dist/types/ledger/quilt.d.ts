import { type Exact } from '../measure/exact.js';
import type { Field } from './field.js';
import type { Ledger } from './ledger.js';
import type { Quantity } from './quantity.js';
/** The finished quilt's two sides. */
export declare const quiltFields: {
    width: Field<import("fraction.js").default>;
    length: Field<import("fraction.js").default>;
};
/** What is added round the quilt for its back and its batting. */
export declare const overageField: Field<import("fraction.js").default>;
/** Lengths sewn or butted side by side; nobody joins more, and a page could not draw them. */
export declare const MOST_JOINED = 100;
/** A rectangle's two sides. */
export interface Size<Length = Exact> {
    width: Length;
    length: Length;
}
/** The exact sides of a size. */
export declare const sidesOf: ({ width, length }: Size<Quantity>) => Size;
/** A size's sides across the cloth and along it, where its length lies along the cloth, or is turned. */
export declare const facing: <Length>({ width, length }: Size<Length>, turned: boolean) => [across: Length, along: Length];
export interface OverageSayings {
    overageTooLarge: undefined;
}
/** The rows that add the overage to a quilt, for its backing or its batting; gives back the size needed. */
export declare const withOverage: (ledger: Ledger<{
    overage: Field<Exact>;
}, "needWidth" | "needLength">, quilt: Size<Quantity>) => Size<Quantity>;
