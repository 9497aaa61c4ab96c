import type { CalculatorName } from '../calculators/calculator.js';
import type { Fields } from '../ledger/field.js';
import type { Input, Reckoning } from '../ledger/ledger.js';
import { type OwnWords } from './common.js';
import { Teller } from './teller.js';
import { type Refused, type Result } from './told.js';
/** Makes the teller that puts a result into words, in its language. */
export declare const tellerOf: (name: CalculatorName, words: OwnWords) => ({ lang, style }: Pick<Reckoning, "lang" | "style">) => Teller;
/** A calculator as a function from plain input to a plain result. */
export declare const headless: <I extends Input, A extends object, More extends unknown[]>(calculator: {
    name: CalculatorName;
    fields: Fields;
    reckon(input: I | null, ...more: More): Reckoning<A>;
}, words: OwnWords) => ((input?: I | null, ...more: More) => Result<A> | Refused);
