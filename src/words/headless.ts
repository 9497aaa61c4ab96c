import type { Answer } from '../ledger/answer.js';
import type { Fields } from '../ledger/field.js';
import type { Input, Reckoning } from '../ledger/ledger.js';
import { Teller, type Vocabulary } from './teller.js';
import { told, type Refused, type Result } from './told.js';

/** A calculator as a function from plain input to a plain result. */
export const headless =
  <I extends Input, A extends Answer>(
    fields: Fields,
    reckon: (input: I | null) => Reckoning<A>,
    words: Vocabulary,
  ) =>
  (input: I | null): Result<A> | Refused => {
    const reckoning = reckon(input);
    return told(reckoning, fields, new Teller(words, reckoning.style, reckoning.lang));
  };
