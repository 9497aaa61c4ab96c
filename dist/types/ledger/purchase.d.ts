import { Branded } from '../measure/brand.js';
import { type Exact } from '../measure/exact.js';
import { Message } from '../measure/message.js';
import { type Step } from '../measure/shop.js';
/** What an amount is counted in: a unit of length, or pieces. */
export type PurchaseUnit = Step['unit'] | 'package' | 'sheet';
/** An amount to buy, already rounded up to a step the shop cuts. */
export declare class Purchase extends Branded {
    readonly inches: Exact;
    /** In its unit. */
    readonly amount: Exact;
    readonly unit: PurchaseUnit;
    /** Its name, if the amount and the unit are not enough. */
    readonly called?: Message | undefined;
    get brand(): 'purchase';
    constructor(inches: Exact, 
    /** In its unit. */
    amount: Exact, unit: PurchaseUnit, 
    /** Its name, if the amount and the unit are not enough. */
    called?: Message | undefined);
}
/** Cloth of this length, which is a step of the shop already. */
export declare const ofCloth: (inches: Exact, { unit }: Step) => Purchase;
/** Enough cloth for this length. */
export declare const enoughFor: (need: Exact, step: Step) => Purchase;
/** Several lengths bought together, as one amount. */
export declare const allOf: (purchases: Purchase[], step: Step) => Purchase;
/** A multiple of something that is bought by the piece. Undefined if its name has no `count`. */
export declare const manyOf: ({ inches, amount, unit, called }: Purchase, times: number) => Purchase | undefined;
/** An amount of money as it is paid, or a price. */
export declare class Money extends Branded {
    readonly value: Exact;
    /** ISO 4217. If it is undefined, money is a number alone. */
    readonly currency: string | undefined;
    /** How many decimals the currency has. */
    readonly decimals: number;
    get brand(): 'money';
    constructor(value: Exact, 
    /** ISO 4217. If it is undefined, money is a number alone. */
    currency: string | undefined, 
    /** How many decimals the currency has. */
    decimals: number);
    /** Its value as a decimal number: `12.50`. A price with parts of a coin keeps all its decimals. */
    get isWholeCoins(): boolean;
    /** The same as plain data: `"12.50"`. */
    get amount(): string;
}
/** One line of a cut list: equal pieces, in sizes on the ruler's marks. */
export declare class Cut extends Branded {
    readonly count: number;
    readonly piece: Message;
    readonly width: Exact;
    readonly length: Exact;
    get brand(): 'cut';
    constructor(count: number, piece: Message, width: Exact, length: Exact);
}
