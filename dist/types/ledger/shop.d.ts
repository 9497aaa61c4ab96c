import { type Exact } from '../measure/exact.js';
import { type Message } from '../measure/message.js';
import { type Step } from '../measure/shop.js';
import type { Field, Label } from './field.js';
import type { Ledger } from './ledger.js';
import { Purchase, type Money } from './purchase.js';
import { Quantity, type Stated } from './quantity.js';
/** How the cloth is washed, sold and priced. */
export declare const shopFields: {
    shrinkage: Field<import("fraction.js").default>;
    increment: Field<Step>;
    price: Field<import("fraction.js").default | undefined>;
    currency: Field<string | undefined>;
};
export interface ShopSayings {
    /** A message about one thing of several: `Fabric A: …`. */
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
    /** How the amount to buy was got: the need, rounded up to a step of the shop. `below` is the step before, which is not enough. */
    upToStep: {
        need: Quantity;
        below: Purchase | undefined;
        step: Stated;
        unit: Step['unit'];
    };
    /** Several amounts as one: several cloths, or cloth by length and sheets of each kind. */
    boughtOfAll: {
        buys: Purchase[];
    };
    eachUpToStep: {
        step: Stated;
    };
    costOf: {
        bought: Purchase | Message;
        price: Money;
    };
}
export declare const sayOfShop: <Code extends "about" | "onlyToSpare" | "nothingToSpare" | "boughtTogether" | "upToStep" | "boughtOfAll" | "eachUpToStep" | "costOf">(code: Code, ...[values]: ShopSayings[Code] extends undefined ? [] : [values: ShopSayings[Code]]) => Message<Code>;
/** The rows of what is bought. */
export type ShopRow = 'fabric' | 'buy' | 'spare' | 'cost';
/** The ledger of a calculator that buys by length. */
export type ShopLedger = Ledger<{
    increment: Field<Step>;
    price: Field<Exact | undefined>;
}, ShopRow>;
/** If less than this is left over, the reader gets a warning. Common practice, no source. */
export declare const SMALL_SPARE: import("fraction.js").default;
/** Warns if so little is left over that one crooked cut would be too much. */
export declare const spareOf: (need: Exact, bought: Exact, step: Step) => Message[];
/** How much cloth to buy for a need, without rows or warnings. */
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
/** The cloth that the shop cuts for this need. */
export declare const cutFor: (ledger: SteppedLedger, need: Quantity) => Quantity;
/** A length, counted in what a price is for: yards, or metres if the shop's step is metric. */
export declare const countedIn: (length: Quantity, { unit }: Step) => Quantity;
/** Several amounts as one that names them all, and counts as this number. */
export declare const naming: (buys: Purchase[], { inches, amount, unit }: Purchase) => Purchase;
/** How the need was got, what its row is called, and the inputs that it depends on. If it is several cloths, what is bought of each. */
interface AboutCloth {
    how?: Quantity | Message;
    label?: Message | undefined;
    from?: readonly string[];
    each?: Purchase[];
}
/** Rounds cloth up to the shop's step. Adds the rows (need, buy, spare, cost), and warns if little is left over. */
export declare const buyCloth: (ledger: ShopLedger, fabric: Quantity, { each, ...about }?: AboutCloth) => Bought;
/** Adds the row of the cost, at this price. */
export declare const costOf: (ledger: ShopLedger, amount: Quantity, bought: Purchase | Message, price: Quantity, from: readonly string[]) => void;
export {};
