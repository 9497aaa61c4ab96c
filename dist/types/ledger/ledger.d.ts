import { type Exact } from '../measure/exact.js';
import type { Style } from '../measure/format.js';
import { Message } from '../measure/message.js';
import { type Fields, type Label, type Values } from './field.js';
import { Money } from './purchase.js';
import { Quantity, Stated } from './quantity.js';
import { type Issue } from './refusal.js';
import { type Row, type RowValue } from './row.js';
/**
 * What goes into a calculator: the names of its attributes in camelCase. A value is a number, or a string as people write it. A
 * length without a unit is in `units`, as a string or as a number. `measured` has the values that a reader typed over reckoned
 * rows, by row id.
 */
export type Input<F extends Fields = Fields> = {
    [K in keyof F]?: unknown;
} & {
    /** The unit of a number alone, and of the working: `in` (default) or `cm`. */
    units?: unknown;
    /** The unit of the working, if that is not `units`: `in` or `cm`. */
    shown?: unknown;
    /** Usable widths of the cloths that it uses, in order, if they are not all `fabricWidth`. */
    fabricWidths?: unknown;
    /** It is a part of a quilt, and the shopping list adds up the cloth of all parts before it rounds. Default false. */
    shared?: unknown;
    /** It is cut from several fabrics, so nothing of it is planned as if all came from one cloth. Default false. */
    apart?: unknown;
    /** BCP 47 language of the words, of the decimal comma and of money. Default `en`. */
    lang?: unknown;
    measured?: Record<string, unknown> | undefined;
};
/** The inputs that are numbers, each as its row. */
export type Quantities<F extends Fields> = {
    [K in keyof F]: [Values<F>[K]] extends [Exact | number] ? Quantity : [Values<F>[K]] extends [Exact | number | undefined] ? Quantity | undefined : undefined;
};
/** The result of a sum, or why there is none. */
export interface Reckoning<Own extends object = object> {
    /** Empty if all is well. */
    issues: Issue[];
    /** The calculator's own result, or undefined if there are issues. */
    own: Own | undefined;
    /** In the order of the sum. If there are issues, only those of the inputs. */
    rows: Row[];
    /** What the reader should know about this answer. */
    notes: Message[];
    cost: Money | undefined;
    /** The price of a yard or a metre, if somebody gave it. */
    price: Money | undefined;
    /** How numbers are shown, and in which language. */
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
 * More about a row: how it was got, if its value does not say it; its name, if its id does not say it; further rows that it comes
 * from; its value as a formula, if it is not a quantity.
 */
interface About {
    how?: Quantity | Message;
    label?: Message | undefined;
    from?: readonly string[];
    formula?: Quantity;
}
/**
 * A calculator writes its working into a ledger. The ledger reads the inputs and keeps the rows in order. It gives each number back
 * together with its row, so that the next sum knows where the number came from. `F` are the inputs, `R` the ids of the other
 * rows.
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
    /** The currency of the prices: the one that was given, or that the first price names. */
    currency: string | undefined;
    constructor(fields: F, given: Input<F> | null);
    /** One entry of an input that holds several lengths. */
    entry(key: keyof F & string, at: number, value: Exact): Quantity;
    /** If no currency is given, takes the first one that these prices name. */
    adopt(...prices: unknown[]): void;
    /** Refuses a price that names another currency. */
    sameCurrency(price: unknown): void;
    issue({ code, values }: Message, input: string): void;
    /** Refuses inputs that do not go together. */
    refuse(input: (keyof F & string) | R, problem: Message): never;
    /** Runs this. If it is refused, says which input causes it, and for which piece. */
    blame<T>(input: (keyof F & string) | R, work: () => T, of?: (problem: Message) => Message): T;
    /** Says which of these are missing. They are optional only if another input is given. */
    require(...keys: (keyof F & string)[]): void;
    /** The row of an input that is optional only if another is given, and that is needed here. */
    needed<K extends keyof F & string>(key: K): NonNullable<Quantities<F>[K]>;
    note(message: Message): void;
    /** Adds the rows of these inputs, or of all that have none yet. */
    given(...keys: (keyof F & string)[]): void;
    /** The text in an input's row, for a sentence. */
    stated(key: keyof F & string): Stated;
    /**
     * Adds a reckoned row, and gives its number back as that row. The formula of the number says how it was got, unless `how` says
     * more.
     */
    row<V extends RowValue>(id: R, value: V, { how, label, from, formula }?: About): V extends Quantity ? Quantity : V;
    /** Adds a reckoned row that a reader can measure and type over. Gives back the number to go on with. */
    measurable(id: R, reckoned: Quantity, { how, label, from }?: About): Quantity;
    /** The smallest coin. */
    get coin(): Exact;
    /** Money that can be paid: rounded to the cent, the yen, the fils. */
    paid(value: Exact): Money;
    /** A price, which may be finer than a coin. */
    priced(value: Exact): Money;
    /** Runs the calculator's own part and completes its result, or gives back what is wrong. */
    finish<Own extends object>(work: () => Own): Reckoning<Own>;
}
export {};
