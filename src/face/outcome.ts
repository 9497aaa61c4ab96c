import type { Answer } from '../ledger/answer.js';
import type { Fields } from '../ledger/field.js';
import type { Reckoning } from '../ledger/ledger.js';
import type { Teller } from '../words/teller.js';
import { told, type Refused, type Result } from '../words/told.js';

/** The result of a calculator, and the same in words. */
export class Outcome<A extends Answer> {
  readonly result: Result<A> | Refused;

  constructor(
    readonly reckoning: Reckoning<A>,
    fields: Fields,
    readonly t: Teller,
  ) {
    this.result = told(reckoning, fields, t);
  }
}

/** One that has an answer. */
export interface Good<A extends Answer> {
  answer: A;
  reckoning: Reckoning<A>;
  result: Result<A>;
  t: Teller;
}

/** The outcome, if it has an answer. */
export const goodOf = <A extends Answer>({ reckoning, result, t }: Outcome<A>): Good<A> | undefined =>
  reckoning.own && !result.errors ? { answer: reckoning.own, reckoning, result: result, t } : undefined;
