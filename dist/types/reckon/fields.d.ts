import { type Exact } from '../measure/exact.js';
import { type Style } from '../measure/format.js';
import { type Step } from '../measure/shop.js';
import type { Units } from '../measure/units.js';
/** A value a person could not have meant; the message is a sentence for her. */
export declare class Refusal extends Error {
    readonly input: string;
    constructor(message: string, input?: string);
}
/** Throws a {@link Refusal}; which input it is about may be said further up. */
export declare const refuse: (message: string, input?: string) => never;
/** Does this; what is refused in it goes to `otherwise`, and anything else that is thrown flies on. */
export declare const unlessRefused: <T, U>(work: () => T, otherwise: (refusal: Refusal) => U) => T | U;
interface About {
    /** A few words beside it, where nothing was reckoned. */
    hint?: string;
    /** Shown among the refinements, folded away at first. */
    more?: true;
    /** What stands there when nothing is written. */
    initial?: string | Record<Units, string>;
    optional?: true;
}
interface Plain<T> extends About {
    kind: 'length' | 'lengths' | 'size' | 'count' | 'percent' | 'money' | 'flag' | 'step' | 'text' | 'own';
    /** What a person calls it. */
    label: string;
    /** Something that could be written there, where nothing is initial. */
    example?: string;
    /** Written over several lines. */
    lines?: true;
    /** A list with a cell for each of its entries, and what one of them is called: `Border`. */
    each?: string | undefined;
    /** Reads what was written. Throws only a {@link Refusal}. */
    read(raw: unknown, style: Style): T;
    /** The value as its reader would write it. Default: as it was written. */
    write?(value: T, style: Style, raw: unknown): string;
    /** The same text with this unit at every length that names none, for where bare numbers mean another. */
    marked?(text: string, unit: Units): string;
}
interface Choice<T> extends Plain<T> {
    /** What can be chosen, each with words for it. */
    options: Record<string, string>;
}
/** One input of a calculator: what may be written there and what stands there when nothing is. */
export type Field<T = unknown> = Plain<T> | Choice<T>;
export type Fields = Record<string, Field>;
/** The values read from a calculator's fields; an optional one that was left out is undefined. */
export type Values<F extends Fields> = {
    [K in keyof F]: ReturnType<F[K]['read']>;
};
/** What stands in a field when nothing is written there. */
export declare const initialOf: ({ initial }: Pick<Field, "initial">, { units }: Style) => string | undefined;
export declare const isBlank: (raw: unknown) => boolean;
/** What was written, as text; nothing for what nobody writes, such as an object. */
export declare const textOf: (raw: unknown) => string;
/** That something has to be written here, and an example. */
export declare const missing: (field: Field, style: Style) => string;
/** Reads one field. Throws only a {@link Refusal}. */
export declare const readField: <T>(field: Field<T>, raw: unknown, style: Style) => T;
/** The same input, which may also be left out. */
export declare const optional: <T>(field: Field<T>, about?: About) => Field<T | undefined>;
/** Reads a length of any size and sign; a bare number is in the page's units, be it a number or text. Throws a {@link Refusal}. */
export declare const readLength: (raw: unknown, style: Style) => Exact;
interface Limits {
    /** It may be 0. */
    zero?: true;
    /** Default 1000 in. */
    most?: string;
}
export declare const lengthField: (label: string, { zero, most, ...about }?: About & Limits) => Field<Exact>;
/** One side of a quilt: not both of them, and no inches with the sign of feet. */
export declare const sideField: (label: string, about?: About) => Field<Exact>;
export declare const LONGEST_LIST = 12;
/** What an entry of a list is called: `Border 2, width`. */
export declare const entryLabel: (each: string, at: number) => string;
/** Several lengths, with commas between; where each has a cell of its own, a place between two commas is not left out. */
export declare const lengthsField: (label: string, { most, each, ...about }: About & Limits & {
    each?: string;
}) => Field<Exact[]>;
/** Two sides: `60 x 80`. */
export declare const sizeField: (label: string, about: About) => Field<[Exact, Exact]>;
export declare const countField: (label: string, most: number, about?: About) => Field<number>;
/** A share, written in percent. */
export declare const percentField: (label: string, about: About) => Field<Exact>;
export declare const moneyField: (label: string) => Field<Exact | undefined>;
export declare const flagField: (label: string, about?: About) => Field<boolean>;
/** One of several; the first stands there when nothing is written. */
export declare const choiceField: (label: string, options: Record<string, string>) => Field<string>;
/** One of several for all, or more with commas between. */
export declare const choicesField: (label: string, options: Record<string, string>) => Field<string[]>;
/** What a shop cuts cloth by. */
export declare const stepField: (label: string, about: About) => Field<Step>;
/** ISO 4217. */
export declare const currencyField: (label: string) => Field<string | undefined>;
/** A size, or the name of one that the shop sells: `18 x 20`, `fat-quarter`. */
export declare const sheetField: (label: string, about: About) => Field<string | undefined>;
export {};
