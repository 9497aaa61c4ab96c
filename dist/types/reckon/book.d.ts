import { type Exact } from '../measure/exact.js';
import { type Style } from '../measure/format.js';
import { type Purchase } from '../measure/shop.js';
import type { Answer, Cut, Input, Own, Problem, Refused, Row } from './answer.js';
import { type Fields, type Values } from './fields.js';
/** A person's own words, so that a row's `how` takes no sign in them for one of its own. */
export declare const asWords: (text: string) => string;
/** Less than this to spare calls for a warning. Common practice, no source. */
export declare const SMALL_SPARE: import("fraction.js").default;
/**
 * The book a calculator writes its working into: it reads the inputs, keeps the rows in order, and fills in the numbers
 * the way the reader writes them.
 */
export declare class Book<F extends Fields> {
    #private;
    readonly fields: F;
    readonly input: Input<F>;
    readonly style: Style;
    readonly lang: string;
    readonly values: Values<F>;
    readonly errors: Problem[];
    readonly rows: Row[];
    readonly notes: string[];
    cost: Answer['cost'];
    constructor(fields: F, given: Input<F> | null);
    /** Where no currency is given, the first that one of these prices names holds. */
    adopt(...prices: unknown[]): void;
    /** Refuses a price that names another currency. */
    sameCurrency(price: unknown): void;
    /** A length as a bare number in the reader's units. */
    n: (value: Exact) => string;
    /** A length with its unit. */
    l: (value: Exact) => string;
    /** `12 × 14 in`, both sides in the reader's units. */
    size: (width: Exact, height: Exact) => string;
    /** Says that the inputs cannot go together. */
    refuse(input: keyof F & string, message: string): never;
    /** Says of what is refused in here which input is to blame, and of what: `The width of fabric A: `. */
    blame<T>(input: string, work: () => T, of?: string): T;
    /** Says which of these are missing: inputs that are optional only beside another. */
    require(...keys: (keyof F & string)[]): void;
    /** Adds the rows of these inputs, or of all that have none yet. */
    given(...keys: (keyof F & string)[]): void;
    /**
     * Adds a reckoned row. In `how`, `{width}` stands for that row's number, `{width unit}` for the number with its unit,
     * `{borders 0}` for the first number of a list, and an `=` before a comma or at the end for the row's own value; the rows
     * so named are what it was reckoned from, with any in `from`. A person's own words go in by {@link asWords}.
     */
    row(id: string, label: string, value: Exact | string | number, how: string, from?: string[]): Row;
    /** Adds a reckoned row that a person can measure and type over; gives back what holds from here on. */
    measurable(id: string, label: string, reckoned: Exact, how: string, from?: string[]): Exact;
    /**
     * Adds the cloth's usable width, and its width once washed where it shrinks. Gives back the width that holds, how a row
     * names it, what a wash leaves of any length, and how a row takes that into account.
     */
    cloth(): {
        cloth: Exact;
        clothRow: string;
        kept: Exact;
        washed: string;
    };
    /** Says so where a width is one that cloth is sold as, selvages and all. */
    cautionOfSelvages(width: Exact): void;
    /** How strips are joined, in a row: `7 × {cloth} − 6 × {loss} = 265`. */
    joined(count: number, each: string, losses: string, reach: Exact): string;
    /** What a size is cut to, where it lies between the ruler's marks. */
    onMark(size: Exact): string;
    /** A line of the cut list. */
    cut(count: number, piece: string, width: Exact, long: Exact): Cut;
    /** What to buy of so much cloth: rounded up to the shop's step. */
    toBuy(fabric: Exact): Purchase;
    /** The same, with a warning of a small spare: of `Fabric A: `, where there are several. */
    upToStep(fabric: Exact, of?: string): {
        bought: Exact;
        buy: Purchase;
    };
    /**
     * Rounds cloth up to the shop's step, with its rows (need, buy, spare, cost), and warns of a small spare. The
     * calculator's fields hold `increment`, `price` and `currency`.
     */
    buy(fabric: Exact, how: string, from?: string[], label?: string): {
        buy: Purchase;
        fabric: Exact;
        spare: Exact;
    };
    /** Adds the cost of so much, where a price was given. */
    price(amount: Exact, text: string, price?: import("fraction.js").default | undefined, from?: string[]): void;
    /** So much money as can be paid: to the cent, the yen, the fils. */
    paid: (value: Exact) => Exact;
    /** An amount of money as it is paid, or a price as it is: a decimal number, and as people write it. */
    sum(value: Exact, paid?: import("fraction.js").default): {
        amount: string;
        text: string;
    };
    money(value: Exact): string;
    /** Runs a calculator's own part and completes its result, or gives back what was wrong. */
    finish<R extends Answer>(work: () => Own<R>): R | Refused;
}
