import type { Field, Label } from '../ledger/field.js';
import { type ListCell } from '../ledger/listing.js';
import type { Caption } from '../ledger/picture.js';
import { Money, Purchase } from '../ledger/purchase.js';
import { type Quantity, type Stated } from '../ledger/quantity.js';
import type { Size } from '../ledger/quilt.js';
import type { RowValue } from '../ledger/row.js';
import { type Exact } from '../measure/exact.js';
import { type Style } from '../measure/format.js';
import { Message } from '../measure/message.js';
import type { Units } from '../measure/units.js';
import { type Rounding } from './formula.js';
/** A few words beside an input; where they name a size, they may be others for each units. */
export type Hint = string | Record<Units, string>;
/** The words of one calculator with those that all share, looked up by key or code. */
export interface Vocabulary {
    /** Their language. */
    lang: string;
    title: string;
    labels: Record<string, string>;
    hints: Record<string, Hint>;
    lockedHints: Record<string, string>;
    options: Record<string, Record<string, Hint>>;
    entries: Record<string, (number: number) => string>;
    entryNames: Record<string, (number: number) => string>;
    sentences: Record<string, string | ((values: never, t: Teller) => string)>;
    /** The words of the calculators in a worksheet, by name. The worksheet needs them to say what its parts say. */
    others?: Record<string, Vocabulary>;
}
/** A word in its plural forms, as `Intl.PluralRules` names them. `other` counts for forms that are missing. */
export type Forms = Partial<Record<Intl.LDMLPluralRule, string>> & {
    other: string;
};
/** Makes sentences of messages, in one language, with lengths in the reader's units. */
export declare class Teller {
    #private;
    readonly words: Vocabulary;
    readonly style: Style;
    /** The page's language, which decides how money is written. */
    readonly lang: string;
    constructor(words: Vocabulary, style: Style, 
    /** The page's language, which decides how money is written. */
    lang: string);
    /** The usual length, or an example, in the reader's units: `40 in`, `105 cm`. */
    usual(texts: Record<Units, string>): string;
    /** An example that differs with the reader's units. */
    forUnits(texts: Record<Units, string>): string;
    /** The few words beside an input. */
    hint(id: string): string;
    /** A length as a number in the reader's units, without the unit. Any other quantity as it is written. */
    n(value: Exact | Quantity): string;
    /** A length with its unit. Any other quantity as it is written. */
    l(value: Exact | Quantity): string;
    /** `12 × 14 in`, both sides in the reader's units. */
    size({ width, length }: Size): string;
    /** A formula with its numbers filled in. */
    formula(quantity: Quantity): string;
    /** The same with its value, unless the formula is only a number: `2 × 40 − 2 × 1/2 = 79`. */
    reckoned(quantity: Quantity): string;
    /** The same with a unit: `2 × 40 − 2 × 1/2 = 79 in`. */
    reckonedLength(quantity: Quantity): string;
    /** A formula that is rounded up: to whole steps, or to a mark of the ruler. */
    rounded(how: Rounding, formula: string, step: Quantity): string;
    /** A sentence from its message. */
    say({ code, values }: Message | {
        code: string;
        values: object;
    }): string;
    private sentence;
    label(what: Label): string;
    /** The name of an entry of a list. */
    entry(of: string, number: number): string;
    /** The same in short, for the button that takes it away. */
    entryName(of: string, number: number): string;
    /** The text that somebody typed, in a sentence. */
    quote(text: string): string;
    /** A number of things, in the right plural form: `2 joins`. */
    many(count: number, forms: Forms): string;
    form(count: number, forms: Forms): string;
    /** The same in the words of another calculator: a worksheet says what its parts say. */
    as(calculator: string): Teller;
    /** The unit of an amount, without the number: `yd`, `fat quarters`. */
    unitOf({ called, unit }: Purchase): string;
    /** What is bought. */
    bought({ called, amount, unit }: Purchase): string;
    /** An amount in the shop's unit. Metres with endless decimals are rounded up, so that the text never says less than the need. */
    shopAmount(amount: Exact, unit: string, comma?: boolean): string;
    money({ value, currency }: Money): string;
    private amount;
    /** What a row holds. */
    value(value: RowValue): string;
    /** A cell of a list. */
    cell(cell: ListCell): string;
    /** Words or a length in a drawing. */
    caption(caption: Caption): string;
    /** A choice of an input in words; the choice itself if it has none. */
    chosen(of: Label, code: string): string;
    /** The text in an input's row: in words, where its author writes codes. */
    standing(id: string, { kind, options, offered }: Field, text: string): string;
    /** The text of an input, in a sentence. */
    stated({ text }: Stated): string;
    /** A length as the reader would type it. */
    typed(value: Exact): string;
}
/** `58 + 2 × 4 = 66 in`. A rounded value has its own sign in place of the equals sign. */
export declare const equals: (formula: string, value: string) => string;
