import { type Exact } from './exact.js';
import { type Units } from './units.js';
/** How lengths are shown: in which units, and whether the language marks decimals with a comma. */
export interface Style {
    units: Units;
    comma?: boolean;
    /** What a bare number is in, where that is not what is shown. */
    bare?: Units | undefined;
}
/** A mixed number as people write it: `121 1/2`. Exact; {@link parseLength} reads it back to the same value. */
export declare const mixed: ({ s, n, d }: Exact) => string;
/**
 * For a page: a mixed number with its unit, with the × after it or the ≥ before it, stays on one line; "1 1/8 yd" may not
 * read as 1/8 yd. A size of whole numbers does too, "81 × 96 in"; others may be longer than a line.
 */
export declare const unbroken: (text: string) => string;
/** The same for a size in a column of its own, which holds all of it. */
export declare const unbrokenSize: (size: string) => string;
/** A decimal number, rounded to at most so many places; no noughts at its end. */
export declare const decimal: (value: Exact, places: number, comma?: boolean) => string;
/**
 * A length in the style's units without the unit: `52 1/2`, `133.35`. Shown exactly where a person could read it
 * (64ths and thirds of an inch, thousandths of a centimetre); otherwise to the nearest 1/16 in or millimetre, behind an ≈.
 */
export declare const number: (inches: Exact, { units, comma }: Style) => string;
/** A length with its unit: `52 1/2 in`, `133.35 cm`. */
export declare const length: (inches: Exact, style: Style) => string;
/**
 * A length as the reader would type it again: in the style's units where that is exact, else in the other system's
 * where that is (150 cm on a page in inches), else rounded as {@link length} does.
 */
export declare const asTyped: (inches: Exact, style: Style) => string;
