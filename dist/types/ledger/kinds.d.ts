import { type Exact } from '../measure/exact.js';
import { type Step } from '../measure/shop.js';
import { type About, type Field } from './field.js';
export declare const countField: (most: number, about?: About) => Field<number>;
/** A share, written in percent. */
export declare const percentField: (about: About) => Field<Exact>;
export declare const moneyField: () => Field<Exact | undefined>;
export declare const flagField: (about?: About) => Field<boolean>;
/** One of several; the first stands there when nothing is written. */
export declare const choiceField: <T extends string>(options: readonly [T, ...T[]], about?: About) => Field<T> & {
    options: readonly T[];
};
/** One of several for all, or more with commas between. */
export declare const choicesField: <T extends string>(options: readonly [T, ...T[]]) => Field<T[]> & {
    options: readonly T[];
};
/** What a shop cuts cloth by. */
export declare const stepField: (about: About) => Field<Step>;
/** ISO 4217. */
export declare const currencyField: () => Field<string | undefined>;
/** A size, or the name of one that the shop sells: `18 x 20`, `fat-quarter`. */
export declare const sheetField: () => Field<string | undefined>;
