import type { Style } from '../measure/format.js';
import type { Exact } from '../measure/exact.js';
import { type Message } from '../measure/message.js';
import type { Units } from '../measure/units.js';
import { type Issue } from './refusal.js';
/** What something is called: the key of an input or a row, or a message where that is not enough. */
export type Label = string | Message;
/** Texts that would do, for "Write it like …". */
export type Example = readonly string[];
/** What is wrong with an input. */
export interface InputSayings {
    missing: {
        what: Label;
        like: Example;
    };
    negative: {
        what: Label;
    };
    noLength: {
        what: Label;
        like: Example;
    };
    tooSmall: {
        what: Label;
        like: Example;
    };
    tooLarge: {
        what: Label;
        most: Exact;
        like: Example;
    };
    /** An entry of a list is one of these. */
    entry: {
        of: string;
        number: number;
    };
    /** In a list, something is wrong with an entry. */
    inList: {
        problem: Message;
    };
    tooManyEntries: {
        what: Label;
        most: number;
    };
    twoSides: {
        text: string;
        side: string;
        other: string;
    };
    feetForInches: {
        text: string;
        feet: string;
        length: Exact;
    };
    notSize: {
        text: string;
    };
    notNumber: {
        text: string;
        like: Example;
    };
    outOfRange: {
        what: Label;
        least: number;
        most: number;
        like: Example;
    };
    notWhole: {
        what: Label;
    };
    lessThanHalfPercent: {
        what: Label;
        text: string;
    };
    notChoice: {
        text: string;
        choices: readonly string[];
    };
    notCurrency: {
        text: string;
    };
    otherCurrency: {
        text: string;
        named: string;
        here: string;
    };
    notUnits: undefined;
}
export declare const say: <Code extends "negative" | "missing" | "noLength" | "tooSmall" | "tooLarge" | "entry" | "inList" | "tooManyEntries" | "twoSides" | "feetForInches" | "notSize" | "notNumber" | "outOfRange" | "notWhole" | "lessThanHalfPercent" | "notChoice" | "notCurrency" | "otherCurrency" | "notUnits">(code: Code, ...[values]: InputSayings[Code] extends undefined ? [] : [values: InputSayings[Code]]) => Message<Code>;
/** What a calculator's author may say of any input. */
export interface About {
    /** Shown among the refinements, folded away at first. */
    more?: true;
    /** What stands there when nothing is written. */
    initial?: string | Record<Units, string>;
    optional?: true;
    /** What a reader in these units is offered to choose from, where that is not all that can be written. */
    offered?: Record<Units, readonly string[]>;
}
export type FieldKind = 'length' | 'lengths' | 'size' | 'count' | 'percent' | 'money' | 'flag' | 'choice' | 'choices' | 'step' | 'text' | 'own';
/** One input of a calculator: what may be written there and what stands there when nothing is. Its words are in `words/`. */
export interface Field<T = unknown> extends About {
    kind: FieldKind;
    /** Something that could be written there, where nothing is initial. */
    example?: Example | Record<Units, Example>;
    /** Written over several lines. */
    lines?: true;
    /** A list with a cell for each of its entries. */
    each?: true | undefined;
    /** What can be chosen. */
    options?: readonly string[];
    /** Reads what was written. Throws only a `Refusal`. */
    read(raw: unknown, style: Style, what: Label): T;
    /** The value as its reader would write it. Default: as it was written. */
    write?(value: T, style: Style, raw: unknown): string;
    /** The same text with this unit at every length that names none, for where bare numbers mean another. */
    marked?(text: string, unit: Units): string;
}
export type Fields = Record<string, Field>;
/** A calculator's inputs. A function makes them, so that a bundler can leave them out where nobody asks for them. */
export declare const inputsOf: <F>(make: () => F) => F;
/** The values read from a calculator's fields; an optional one that was left out is undefined. */
export type Values<F extends Fields> = {
    [K in keyof F]: ReturnType<F[K]['read']>;
};
/** What stands in a field when nothing is written there. */
export declare const initialOf: ({ initial }: Pick<Field, "initial">, { units }: Style) => string | undefined;
export declare const isBlank: (raw: unknown) => raw is undefined | null | "";
/** What was written, as text; nothing for what nobody writes, such as an object. */
export declare const textOf: (raw: unknown) => string;
/** What works in a field, for a sentence about what does not. */
export declare const likeIn: (field: Pick<Field, "initial" | "example">, style: Style) => Example;
/** That something has to be written here, and an example. */
export declare const missing: (field: Field, style: Style, what: Label) => Message;
/** Whether nothing was written where something has to be. */
export declare const isMissing: ({ code, values, input }: Issue) => boolean;
/** Reads one field. Throws only a `Refusal`. */
export declare const readField: <T>(field: Field<T>, raw: unknown, style: Style, what: Label) => T | undefined;
/** The same input, which may also be left out. */
export declare const optional: <T>(field: Field<T>, about?: About) => Field<T | undefined>;
/** What stands in an input's row, as its reader would write it. */
export declare const standing: (field: Field, value: unknown, written: unknown, style: Style) => string;
