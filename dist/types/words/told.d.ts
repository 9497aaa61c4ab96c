import { type Fields } from '../ledger/field.js';
import type { Reckoning } from '../ledger/ledger.js';
import { Cut, Money, Purchase } from '../ledger/purchase.js';
import { Quantity } from '../ledger/quantity.js';
import type { Row } from '../ledger/row.js';
import { type Exact } from '../measure/exact.js';
import { Message } from '../measure/message.js';
import { type Teller } from './teller.js';
/** One line of the working. */
export interface WorkingRow {
    /** The input's key, or a name for the reckoned value. */
    id: string;
    label: string;
    /** As shown: `66 in`, `across the cloth`. */
    value: string;
    /** A choice or a tick as an author writes it: `across`, `yes`. */
    code?: string | undefined;
    /** The exact inches, if the value is a length: `"66"`. */
    inches?: string | undefined;
    /** How it was got, with the numbers filled in: `58 + 2 × 4 = 66 in`. */
    how: string;
    /** The ids of the rows it was reckoned from. */
    from: string[];
    /** `given`: an input. `measurable`: the reader may type over it. `measured`: the reader did. */
    role: 'given' | 'reckoned' | 'measurable' | 'measured';
    /** For a measured row: the reckoned value. */
    reckoned?: string | undefined;
    /** One of the further settings, folded away at first. */
    more?: true | undefined;
}
/** An amount to buy, already rounded up to a step the shop cuts. */
export interface WrittenPurchase {
    /** Exact inches, as a mixed number: `"135"`. */
    inches: string;
    /** In the shop's unit, as a mixed number of yards or decimal metres: `"3 3/4"`. */
    amount: string;
    /** `yd`, `m` or `in`; a package of batting is `package`. */
    unit: string;
    /** For people: `"3 3/4 yd"`. */
    text: string;
}
/** An amount of money: a decimal number, and as people write it. */
export interface WrittenMoney {
    amount: string;
    text: string;
}
/** One line of a cut list. */
export interface WrittenCut {
    count: number;
    /** What it is for. */
    piece: string;
    /** On the ruler's marks, exact inches. */
    width: string;
    length: string;
    /** As shown: `3 1/2 × 66 in`. */
    text: string;
}
/** A value in a result: plain JSON, with lengths as exact inches and messages as sentences. */
export type Written<T> = T extends Exact | Message | Quantity ? string : T extends Purchase ? WrittenPurchase : T extends Money ? WrittenMoney : T extends Cut ? WrittenCut : T extends readonly (infer One)[] ? Written<One>[] : T extends object ? {
    [K in keyof T as K extends 'used' ? never : K]: Written<T[K]>;
} : T;
/** What a calculator gives: its answer, and how it was got. */
export type Result<Own extends object> = Written<Own> & {
    errors?: undefined;
    /** What it costs, if there is a price. */
    cost?: WrittenMoney | undefined;
    /** Things the reader should know about this answer. */
    notes: string[];
    working: WorkingRow[];
};
/** An input that could not be used, and a sentence about it. */
export interface Problem {
    /** The key of the input in camelCase, or the id of a row that the reader typed over. */
    input: string;
    message: string;
}
/** What a calculator gives back when an input could not be used. */
export interface Refused {
    errors: Problem[];
    /** The input rows only. */
    working: WorkingRow[];
    buy?: undefined;
}
/** A row in words. */
export declare const toldRow: (row: Row, fields: Fields, t: Teller) => WorkingRow;
/** The result as plain data in words. Each part is made when somebody first reads it. */
export declare const told: <Own extends object>({ issues, own, rows, notes, cost }: Reckoning<Own>, fields: Fields, t: Teller) => Result<Own> | Refused;
