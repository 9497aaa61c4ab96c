import type { Answer } from '../ledger/answer.js';
import type { Fields } from '../ledger/field.js';
import type { Reckoning } from '../ledger/ledger.js';
import type { Teller } from '../words/teller.js';
import { type Refused, type Result } from '../words/told.js';
/** The result of a calculator, and the same in words. */
export declare class Outcome<A extends Answer> {
    readonly reckoning: Reckoning<A>;
    readonly t: Teller;
    readonly result: Result<A> | Refused;
    constructor(reckoning: Reckoning<A>, fields: Fields, t: Teller);
}
/** One that has an answer. */
export interface Good<A extends Answer> {
    answer: A;
    reckoning: Reckoning<A>;
    result: Result<A>;
    t: Teller;
}
/** The outcome, if it has an answer. */
export declare const goodOf: <A extends Answer>({ reckoning, result, t }: Outcome<A>) => Good<A> | undefined;
