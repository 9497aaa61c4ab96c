import { type Exact } from '../measure/exact.js';
import { type Style } from '../measure/format.js';
import { type Step } from '../measure/shop.js';
interface Base {
    /** What a person calls it. */
    label: string;
    /** A few words beside it, where nothing was reckoned. */
    hint?: string;
    /** Shown among the refinements, folded away at first. */
    more?: true;
}
/** One input of a calculator: what may be written there and what stands there when nothing is. */
export type Field = Base & ({
    kind: 'length';
    initial?: string;
    optional?: true;
    zero?: true;
    most?: string;
} | {
    kind: 'lengths';
    optional?: true;
    most?: string;
} | {
    kind: 'size';
    initial?: string;
    optional?: true;
} | {
    kind: 'count';
    initial?: string;
    optional?: true;
    least?: number;
    most: number;
} | {
    kind: 'percent';
    initial: string;
} | {
    kind: 'money';
    optional: true;
} | {
    kind: 'choice';
    initial: string;
    options: Record<string, string>;
} | {
    kind: 'choices';
    initial: string;
    options: Record<string, string>;
} | {
    kind: 'flag';
} | {
    kind: 'step';
    initial: {
        in: string;
        cm: string;
    };
} | {
    kind: 'mark';
    initial: {
        in: string;
        cm: string;
    };
} | {
    kind: 'text';
    optional: true;
    pattern?: RegExp;
    example?: string;
} | {
    kind: 'own';
    optional?: true;
    lines?: true;
    read: (raw: unknown, style: Style) => unknown;
    write: (raw: unknown) => string;
});
export type Fields = Record<string, Field>;
type ValueOf<F extends Field> = F['kind'] extends 'length' | 'percent' | 'money' | 'mark' ? Exact : F['kind'] extends 'lengths' ? Exact[] : F['kind'] extends 'size' ? [Exact, Exact] : F['kind'] extends 'count' ? number : F['kind'] extends 'choices' ? string[] : F['kind'] extends 'flag' ? boolean : F['kind'] extends 'step' ? Step : F extends {
    read: (raw: unknown, style: Style) => infer Own;
} ? Own : string;
/** The values read from a calculator's fields; an optional one that was left out is undefined. */
export type Values<F extends Fields> = {
    [K in keyof F]: F[K] extends {
        optional: true;
    } ? ValueOf<F[K]> | undefined : ValueOf<F[K]>;
};
/** A value a person could not have meant; the message is a sentence for her. */
export declare class Refusal extends Error {
    readonly input: string;
    constructor(message: string, input?: string);
}
/** What stands in a field when nothing is written there. */
export declare const initialOf: (field: Field, style: Style) => string | undefined;
export declare const isBlank: (raw: unknown) => boolean;
/** What was written, as text; nothing for what nobody writes, such as an object. */
export declare const textOf: (raw: unknown) => string;
/** Reads a length of any size and sign. Throws a {@link Refusal}. */
export declare const lengthOf: (raw: unknown, style: Style) => Exact;
/** That something has to be written here, and an example. */
export declare const missing: (field: Field, style: Style) => string;
/** Reads one field. Throws only a {@link Refusal}. */
export declare const readField: (field: Field, raw: unknown, style: Style) => unknown;
export {};
