import { type Exact } from '../measure/exact.js';
import type { Style } from '../measure/format.js';
import { Message } from '../measure/message.js';
import { type Fields, type Label, type Values } from './field.js';
import { Money } from './purchase.js';
import { Quantity, Stated } from './quantity.js';
import { type Issue } from './refusal.js';
import { type Row, type RowValue } from './row.js';
/**
 * What goes into a calculator: its attributes' names in camelCase, each a string as a person writes it or a number; a length
 * without a unit is in `units`, be it a string or a number. `measured` holds values typed over reckoned rows, by row id.
 */
export type Input<F extends Fields = Fields> = {
    [K in keyof F]?: unknown;
} & {
    /** What a bare number is in and what the working is shown in: `in` (default) or `cm`. */
    units?: unknown;
    /** What the working is shown in, where that is not `units`: `in` or `cm`. */
    shown?: unknown;
    /** Usable widths of the cloth that its parts are cut from, one for each in turn, where they are not all `fabricWidth`. */
    fabricWidths?: unknown;
    /** It is one of several parts whose cloth is added up by fabric before it is bought. Default false. */
    shared?: unknown;
    /** BCP 47 language of the words; decides the decimal comma and how money is written too. Default `en`. */
    lang?: unknown;
    measured?: Record<string, unknown> | undefined;
};
/** The inputs that can be reckoned with, each as the row that it stands in. */
export type Quantities<F extends Fields> = {
    [K in keyof F]: [Values<F>[K]] extends [Exact | number] ? Quantity : [Values<F>[K]] extends [Exact | number | undefined] ? Quantity | undefined : undefined;
};
/** What was reckoned, or why it could not be. */
export interface Reckoning<Own extends object = object> {
    /** Empty where all is well. */
    issues: Issue[];
    /** The calculator's own result; undefined where there are issues. */
    own: Own | undefined;
    /** In the order of the sum; the inputs' alone where there are issues. */
    rows: Row[];
    /** What the reader should know about this answer. */
    notes: Message[];
    cost: Money | undefined;
    /** What a yard or a metre costs, where that was given. */
    price: Money | undefined;
    /** How numbers are shown, and the language that was asked for. */
    style: Style;
    lang: string;
}
export interface MeasuredSayings {
    measuredLess: {
        what: Label;
        measured: Exact;
        reckoned: Exact;
    };
}
/**
 * How a row was got, where its own value does not say it; what it is called, where its id does not; further rows it is from;
 * its value as a formula, where that is no quantity.
 */
interface About {
    how?: Quantity | Message;
    label?: Message | undefined;
    from?: readonly string[];
    formula?: Quantity;
}
/**
 * The ledger a calculator writes its working into: it reads the inputs, keeps the rows in order, and gives every number back
 * with the row it stands in, so that what is reckoned with it knows where it came from. `F` are its inputs, `R` the ids of
 * its other rows.
 */
export declare class Ledger<F extends Fields = Fields, R extends string = string> {
    #private;
    readonly fields: F;
    readonly input: Input<F>;
    readonly style: Style;
    readonly lang: string;
    readonly values: Values<F>;
    readonly inputs: Quantities<F>;
    readonly issues: Issue[];
    readonly rows: Row[];
    readonly notes: Message[];
    cost: Money | undefined;
    /** What prices are in: as given, or as the first price names it. */
    currency: string | undefined;
    constructor(fields: F, given: Input<F> | null);
    /** An entry of an input that holds several lengths, as its row. */
    entry(key: keyof F & string, at: number, value: Exact): Quantity;
    /** Where no currency is given, the first that one of these prices names holds. */
    adopt(...prices: unknown[]): void;
    /** Refuses a price that names another currency. */
    sameCurrency(price: unknown): void;
    issue({ code, values }: Message, input: string): void;
    /** Says that the inputs cannot go together. */
    refuse(input: (keyof F & string) | R, problem: Message): never;
    /** Says of what is refused in here which input is to blame, and of what. */
    blame<T>(input: (keyof F & string) | R, work: () => T, of?: (problem: Message) => Message): T;
    /** Says which of these are missing: inputs that are optional only beside another. */
    require(...keys: (keyof F & string)[]): void;
    /** An input that is optional only beside another, and has to be here: its row. */
    needed<K extends keyof F & string>(key: K): NonNullable<Quantities<F>[K]>;
    note(message: Message): void;
    /** Adds the rows of these inputs, or of all that have none yet. */
    given(...keys: (keyof F & string)[]): void;
    /** What stands in an input's row, for a sentence. */
    stated(key: keyof F & string): Stated;
    /**
     * Adds a reckoned row and gives its number back as the row it stands in. Its own formula is how it was got, unless `how`
     * says more.
     */
    row<V extends RowValue>(id: R, value: V, { how, label, from, formula }?: About): V extends Quantity ? Quantity : V;
    /** Adds a reckoned row that a person can measure and type over; gives back what holds from here on. */
    measurable(id: R, reckoned: Quantity, { how, label, from }?: About): Quantity;
    /** The smallest coin. */
    get coin(): Exact;
    /** So much money as can be paid: to the cent, the yen, the fils. */
    paid(value: Exact): Money;
    /** A price, which may be finer than a coin. */
    priced(value: Exact): Money;
    /** Runs a calculator's own part and completes its result, or gives back what was wrong. */
    finish<Own extends object>(work: () => Own): Reckoning<Own>;
}
export {};
