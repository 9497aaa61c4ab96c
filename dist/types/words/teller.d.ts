import type { Label } from '../ledger/field.js';
import type { ListCell } from '../ledger/listing.js';
import type { Caption } from '../ledger/picture.js';
import { Money, Purchase } from '../ledger/purchase.js';
import { type Quantity, type Stated } from '../ledger/quantity.js';
import type { Size } from '../ledger/quilt.js';
import type { RowValue } from '../ledger/row.js';
import { type Exact } from '../measure/exact.js';
import { type Style } from '../measure/format.js';
import { Message } from '../measure/message.js';
import { type Units } from '../measure/units.js';
import { type Rounding } from './formula.js';
/** A few words beside an input; where they name a size, they may be others for each units. */
export type Hint = string | Record<Units, string>;
/** The words of one calculator with those that all share, looked up by key or code. */
export interface Vocabulary {
    /** The language that they are in. */
    lang: string;
    title: string;
    labels: Record<string, string>;
    hints: Record<string, Hint>;
    lockedHints: Record<string, string>;
    options: Record<string, Record<string, string>>;
    entries: Record<string, (number: number) => string>;
    entryNames: Record<string, (number: number) => string>;
    sentences: Record<string, string | ((values: never, t: Teller) => string)>;
    /** The words of the calculators that a worksheet's parts are, by their names: it says what they say. */
    others?: Record<string, Vocabulary>;
}
/** A word in its plural forms, as `Intl.PluralRules` names them; `other` holds for those that are not given. */
export type Forms = Partial<Record<Intl.LDMLPluralRule, string>> & {
    other: string;
};
/** Makes sentences of messages, in one language, with lengths in the reader's units. */
export declare class Teller {
    readonly words: Vocabulary;
    readonly style: Style;
    /** The page's language, which decides how money is written. */
    readonly lang: string;
    constructor(words: Vocabulary, style: Style, 
    /** The page's language, which decides how money is written. */
    lang: string);
    /** What is usual where people measure as the reader does, or an example in her units: `40 in`, `105 cm`. */
    usual(texts: Record<Units, string>): string;
    /** The few words beside an input. */
    hint(id: string): string;
    /** A length as a bare number in the reader's units; any other quantity as it is written. */
    n(value: Exact | Quantity): string;
    /** A length with its unit; any other quantity as it is written. */
    l(value: Exact | Quantity): string;
    /** `12 × 14 in`, both sides in the reader's units. */
    size({ width, length }: Size): string;
    /** A formula with its numbers filled in. */
    formula(quantity: Quantity): string;
    /** The same and what it comes to, where it is more than a number: `2 × 40 − 2 × 1/2 = 79`. */
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
    /** What an entry of a list is called. */
    entry(of: string, number: number): string;
    /** The same in short, where it is to be taken away. */
    entryName(of: string, number: number): string;
    /** Somebody's text inside a sentence. */
    quote(text: string): string;
    /** So many of something, in its plural form: `2 joins`. */
    many(count: number, forms: Forms): string;
    form(count: number, forms: Forms): string;
    /** The same in the words of another calculator: a worksheet says what its parts say. */
    as(calculator: string): Teller;
    /** What an amount is counted in, without the number: `yd`, `fat quarters`. */
    unitOf({ called, unit }: Purchase): string;
    /** What is bought. */
    bought({ called, amount, unit }: Purchase): string;
    /** An amount in the shop's unit. Metres are rounded up where they have no end: less than the need is never written. */
    shopAmount(amount: Exact, unit: string, comma?: boolean): string;
    money({ value, currency }: Money): string;
    private amount;
    /** What a row holds. */
    value(value: RowValue): string;
    /** A cell of a list. */
    cell(cell: ListCell): string;
    /** Words or a length in a drawing. */
    caption(caption: Caption): string;
    /** What stands in an input's row, in a sentence. */
    stated({ text }: Stated): string;
    /** A length as its reader would type it again. */
    typed(value: Exact): string;
}
/** `58 + 2 × 4 = 66 in`; what is not exact says so itself. */
export declare const equals: (formula: string, value: string) => string;
