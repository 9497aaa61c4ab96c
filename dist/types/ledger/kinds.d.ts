import { type Exact } from '../measure/exact.js';
import { type Step } from '../measure/shop.js';
import { type About, type Field } from './field.js';
export declare const countField: (most: number, about?: About) => Field<number>;
/** A share, written in percent. */
export declare const percentField: (about: About) => Field<Exact>;
export declare const moneyField: () => Field<Exact | undefined>;
export declare const flagField: (about?: About) => Field<boolean>;
/** A choice of one. The first counts if nobody chooses. */
export declare const choiceField: <T extends string>(options: readonly [T, ...T[]], about?: About) => Field<T> & {
    options: readonly T[];
};
/** One choice for all, or several with commas between them. */
export declare const choicesField: <T extends string>(options: readonly [T, ...T[]]) => Field<T[]> & {
    options: readonly T[];
};
/** The step by which a shop cuts cloth. */
export declare const stepField: (about: About) => Field<Step>;
/** ISO 4217. */
export declare const currencyField: () => Field<string | undefined>;
/** A size, or the name of one that the shop sells: `18 x 20`, `fat-quarter`. */
export declare const sheetField: () => Field<string | undefined>;
