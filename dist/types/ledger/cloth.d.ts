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
    /** Cloth sold by this width has less without its selvages. */
    selvages: {
        width: Exact;
        usable: Exact;
    };
    /** Something said of one of several cloths, by its number. */
    ofCloth: {
        number: number;
        says: Message;
    };
}
export declare const sayOfCloth: <Code extends "selvages" | "washFirst" | "washedWider" | "ofCloth">(code: Code, ...[values]: ClothSayings[Code] extends undefined ? [] : [values: ClothSayings[Code]]) => Message<Code>;
/** A ledger of something that is cut from cloth. */
export type ClothLedger = Ledger<{
    fabricWidth: Field<Exact>;
    shrinkage: Field<Exact>;
}, 'washedWidth'>;
/** Cloth as it is cut: its usable width, once washed, and what a wash leaves of any length. */
export interface Cloth {
    width: Quantity;
    /** The same as sold. */
    sold: Quantity;
    /** What a wash leaves of one inch. */
    kept: Exact;
    /** What a wash leaves of so much cloth. */
    washed: (sold: Quantity) => Quantity;
    /** The cloth to buy for so much of it once washed. */
    toBuy: (washed: Quantity) => Quantity;
}
/** That a width is one that cloth is sold as, selvages and all; nothing where it is none. */
export declare const selvagesOf: (width: Exact, { units }: Style) => Message[];
/** Adds the cloth's usable width, and its width once washed where it shrinks. */
export declare const clothOf: (ledger: ClothLedger) => Cloth;
