import type { Answer } from '../ledger/answer.js';
import type { Fields } from '../ledger/field.js';
import type { Reckoning } from '../ledger/ledger.js';
import type { Teller } from '../words/teller.js';
import { told, type Refused, type Result } from '../words/told.js';

/** What a calculator came to, and the same in words. */
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

/** An outcome as one with an answer, if it has one. */
export const goodOf = <A extends Answer>({ reckoning, result, t }: Outcome<A>): Good<A> | undefined =>
  reckoning.own && !result.errors ? { answer: reckoning.own, reckoning, result: result, t } : undefined;
