import { type Exact } from '../measure/exact.js';
import type { Style } from '../measure/format.js';
import { type Message } from '../measure/message.js';
import type { Field } from './field.js';
import type { Ledger } from './ledger.js';
import type { Quantity } from './quantity.js';
/** The cloth as it lies in the shop. */
export declare const clothFields: {
    fabricWidth: Field<import("fraction.js").default>;
};
/** How much it shrinks in the wash. */
export declare const shrinkageField: Field<import("fraction.js").default>;
export interface ClothSayings {
    washFirst: undefined;
    washedWider: {
        width: Exact;
    };
    /** Cloth that is sold with this width has less without its selvages. */
    selvages: {
        width: Exact;
        usable: Exact;
    };
    /** A message about one of several cloths, with its number. */
    ofCloth: {
        number: number;
        says: Message;
    };
}
export declare const sayOfCloth: <Code extends "selvages" | "washFirst" | "washedWider" | "ofCloth">(code: Code, ...[values]: ClothSayings[Code] extends undefined ? [] : [values: ClothSayings[Code]]) => Message<Code>;
/** The ledger of a calculator that cuts from cloth. */
export type ClothLedger = Ledger<{
    fabricWidth: Field<Exact>;
    shrinkage: Field<Exact>;
}, 'washedWidth'>;
/** The cloth to cut from: its usable width after the wash, and how much a wash leaves of a length. */
export interface Cloth {
    width: Quantity;
    /** The same as sold. */
    sold: Quantity;
    /** How much a wash leaves of one inch. */
    kept: Exact;
    /** How much a wash leaves of this length. */
    washed: (sold: Quantity) => Quantity;
    /** How much cloth to buy, so that this length is left after the wash. */
    toBuy: (washed: Quantity) => Quantity;
}
/** Warns if a width is one that shops name with selvages; empty if it is not. */
export declare const selvagesOf: (width: Exact, { units }: Style) => Message[];
/** Adds the rows of the cloth's usable width and, if it shrinks, its width after the wash. */
export declare const clothOf: (ledger: ClothLedger) => Cloth;
