import { type Exact } from '../measure/exact.js';
import { type Message } from '../measure/message.js';
import { type Step } from '../measure/shop.js';
import type { Field, Label } from './field.js';
import type { Ledger } from './ledger.js';
import { type Money, type Purchase } from './purchase.js';
import { Quantity, type Stated } from './quantity.js';
/** How the cloth is washed, sold and priced. */
export declare const shopFields: {
    shrinkage: Field<import("fraction.js").default>;
    increment: Field<Step>;
    price: Field<import("fraction.js").default | undefined>;
    currency: Field<string | undefined>;
};
export interface ShopSayings {
    /** Something said of one thing among several: `Fabric A: …`. */
    about: {
        what: Label;
        says: Message;
    };
    onlyToSpare: {
        spare: Exact;
        next: Purchase;
    };
    nothingToSpare: {
        next: Purchase;
    };
    boughtTogether: undefined;
    /** How the amount to buy was got: the need, in the shop's unit, up to its step; `below` is the step that is not enough. */
    upToStep: {
        need: Quantity;
        below: Purchase | undefined;
        step: Stated;
        unit: Step['unit'];
    };
    costOf: {
        bought: Purchase | Message;
        price: Money;
    };
}
export declare const sayOfShop: <Code extends "about" | "onlyToSpare" | "nothingToSpare" | "boughtTogether" | "upToStep" | "costOf">(code: Code, ...[values]: ShopSayings[Code] extends undefined ? [] : [values: ShopSayings[Code]]) => Message<Code>;
/** The rows of what is bought. */
export type ShopRow = 'fabric' | 'buy' | 'spare' | 'cost';
/** A ledger of something that is bought by length. */
export type ShopLedger = Ledger<{
    increment: Field<Step>;
    price: Field<Exact | undefined>;
}, ShopRow>;
/** Less than this to spare calls for a warning. Common practice, no source. */
export declare const SMALL_SPARE: import("fraction.js").default;
/** A warning, where so little is left of so much that a crooked cut would leave the reader short. */
export declare const spareOf: (need: Exact, bought: Exact, step: Step) => Message[];
/** What is bought of so much cloth, before anything is said of it. */
export interface Bought {
    buy: Purchase;
    /** What is needed, before it is rounded up. */
    fabric: Exact;
    spare: Exact;
}
interface SteppedLedger {
    values: {
        increment: Step;
    };
    entry(key: 'increment', at: number, value: Exact): Quantity;
}
/** So much cloth as the shop cuts for this need. */
export declare const cutFor: (ledger: SteppedLedger, need: Quantity) => Quantity;
/** So many inches, counted in what a price is of: yards, or metres where the shop's step is metric. */
export declare const countedIn: (length: Quantity, { unit }: Step) => Quantity;
/** Rounds cloth up to the shop's step, with its rows (need, buy, spare, cost), and warns of a small spare. */
export declare const buyCloth: (ledger: ShopLedger, fabric: Quantity, about?: {
    how?: Quantity | Message;
    label?: Message | undefined;
    from?: readonly string[];
}) => Bought;
/** Adds the cost of so much, at this price. */
export declare const costOf: (ledger: ShopLedger, amount: Quantity, bought: Purchase | Message, price: Quantity, from: readonly string[]) => void;
export {};
