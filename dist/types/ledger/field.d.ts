import { type Style } from '../measure/format.js';
import type { Exact } from '../measure/exact.js';
import { type Message } from '../measure/message.js';
import type { Units } from '../measure/units.js';
import { type Issue } from './refusal.js';
/** The name of something: the key of an input or a row, or a message if the key is not enough. */
export type Label = string | Message;
/** Texts that work, for "Write it like …". */
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
    /** The name of one entry of a list. */
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
    /** Of a short length, with an example that is short too. */
    notShortLength: {
        text: string;
        like: Example;
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
    /** For a reader, who chooses in words. */
    notChoice: {
        text: string;
        of: Label;
        choices: readonly string[];
    };
    /** The same for an author, who writes codes. */
    notCode: {
        text: string;
        choices: readonly string[];
    };
    yes: undefined;
    no: undefined;
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
export declare const say: <Code extends "negative" | "missing" | "noLength" | "tooSmall" | "tooLarge" | "entry" | "inList" | "tooManyEntries" | "twoSides" | "feetForInches" | "notShortLength" | "notSize" | "notNumber" | "outOfRange" | "notWhole" | "lessThanHalfPercent" | "notChoice" | "notCode" | "yes" | "no" | "notCurrency" | "otherCurrency" | "notUnits">(code: Code, ...[values]: InputSayings[Code] extends undefined ? [] : [values: InputSayings[Code]]) => Message<Code>;
/** What a calculator can set for any input. */
export interface About {
    /** It is one of the further settings, folded away at first. */
    more?: true;
    /** Its value if nobody writes one. */
    initial?: string | Record<Units, string>;
    /** The initial value changes when a reader asks for other units. Others stay what they are where the page was written. */
    followsReader?: true;
    optional?: true;
    /** What a reader in these units is offered to choose from, where that is not all that can be written. */
    offered?: Record<Units, readonly string[]>;
    /** Something else than what is offered can be written too. */
    ownToo?: true;
}
export type FieldKind = 'length' | 'lengths' | 'size' | 'count' | 'percent' | 'money' | 'flag' | 'choice' | 'choices' | 'step' | 'text' | 'own';
/** One input of a calculator: what people may write, and its value if they write nothing. Its words are in `words/`. */
export interface Field<T = unknown> extends About {
    kind: FieldKind;
    /** Something that could be written there, where nothing is initial. */
    example?: Example | Record<Units, Example>;
    /** Written over several lines. */
    lines?: true;
    /** A list with a cell for each of its entries. */
    each?: true | undefined;
    /** The choices. */
    options?: readonly string[];
    /** Reads what somebody wrote. Throws only a `Refusal`. */
    read(raw: unknown, style: Style, what: Label): T;
    /** The value as the reader would write it. Default: the text itself. */
    write?(value: T, style: Style, raw: unknown): string;
    /** Adds this unit to every length that has none, for a place where a number alone means another unit. */
    marked?(text: string, unit: Units): string;
}
export type Fields = Record<string, Field>;
/** A calculator's inputs. A function makes them, so that a bundler can leave them out if nobody uses them. */
export declare const inputsOf: <F>(make: () => F) => F;
/** The values of a calculator's inputs. An optional one is undefined if nobody gave it. */
export type Values<F extends Fields> = {
    [K in keyof F]: ReturnType<F[K]['read']>;
};
/** The value of an input if nobody writes one. */
export declare const initialOf: ({ initial, followsReader }: Pick<Field, "initial" | "followsReader">, style: Style) => string | undefined;
export declare const isBlank: (raw: unknown) => raw is undefined | null | "";
/** What somebody wrote, as text. Empty for what nobody can write, such as an object. */
export declare const textOf: (raw: unknown) => string;
/** Examples that work in a field, for a sentence about a text that does not. */
export declare const likeIn: (field: Pick<Field, "initial" | "example" | "followsReader">, style: Style) => Example;
/** Says that the input is missing, with an example. */
export declare const missing: (field: Field, style: Style, what: Label) => Message;
/** Whether the input is needed and nobody wrote it. */
export declare const isMissing: ({ code, values, input }: Issue) => boolean;
/** Reads one field. Throws only a `Refusal`. */
export declare const readField: <T>(field: Field<T>, raw: unknown, style: Style, what: Label) => T | undefined;
/** Makes an input optional. */
export declare const optional: <T>(field: Field<T>, about?: About) => Field<T | undefined>;
/** The text in an input's row, as the reader would write it. */
export declare const standing: (field: Field, value: unknown, written: unknown, style: Style) => string;
