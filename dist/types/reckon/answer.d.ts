import type { Exact } from '../measure/exact.js';
import type { Purchase } from '../measure/shop.js';
import type { Fields } from './fields.js';
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
    /** BCP 47 language; decides the decimal comma and how money is written. Default `en`. */
    lang?: unknown;
    measured?: Record<string, unknown>;
};
/** One line of the working. */
export interface Row {
    /** The input's key, or a name for the reckoned value. */
    id: string;
    label: string;
    /** As shown: `66 in`. */
    value: string;
    /** The exact inches, where the value is a length: `"66"`. */
    inches?: string;
    /** How it was got, with the numbers filled in: `58 + 2 × 4 = 66 in`. */
    how: string;
    /** The ids of the rows it was reckoned from. */
    from: string[];
    /** `given` is an input; a `measurable` row may be typed over, and is then `measured`. */
    role: 'given' | 'reckoned' | 'measurable' | 'measured';
    /** For a measured row: what was reckoned there. */
    reckoned?: string;
    /** A refinement, folded away at first. */
    more?: true;
}
/** The row of this id, where the working has one. */
export declare const rowIn: ({ working }: {
    working: Row[];
}, id: string) => Row | undefined;
/** The usable width of the cloth that a result was reckoned with, once washed: exact inches. */
export declare const clothWidth: (result: {
    working: Row[];
}) => string;
/** An input that could not be used, and a sentence about it. */
export interface Problem {
    /** The input's key in camelCase, or the id of a typed-over row. */
    input: string;
    message: string;
}
/** What a calculator gives back when an input could not be used. */
export interface Refused {
    errors: Problem[];
    /** The input rows only. */
    working: Row[];
    buy?: undefined;
}
/** What every calculator gives back. */
export interface Answer {
    errors?: undefined;
    /** What to buy, rounded up to the shop's step. */
    buy: Purchase;
    /** Exact inches needed before rounding. */
    fabric: string;
    /** Exact inches bought beyond the need. */
    spare: string;
    /** What it costs, where a price was given. */
    cost?: {
        amount: string;
        text: string;
    };
    /** One sentence under the answer. */
    summary: string;
    /** What to cut. Empty where nothing is cut. */
    cuts: Cut[];
    /** Things the reader should know about this answer. */
    notes: string[];
    working: Row[];
}
/** One line of a cut list. */
export interface Cut {
    count: number;
    /** What it is for. */
    piece: string;
    /** On the ruler's marks, exact inches. */
    width: string;
    length: string;
    /** As shown: `3 1/2 in × 66 in`. */
    text: string;
}
/** A result whose lengths are not yet written out. */
export type Unwritten<T> = T extends string ? string extends T ? T | Exact : T : {
    [K in keyof T]: Unwritten<T[K]>;
};
/** Whatever a calculator's own part returns; the book adds the rest. */
export type Own<R extends Answer> = Unwritten<Omit<R, 'working' | 'notes' | 'cost' | 'errors'>>;
