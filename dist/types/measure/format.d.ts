import { type Exact } from './exact.js';
import { type Units } from './units.js';
/** How lengths are shown: in which units, and whether the language marks decimals with a comma. */
export interface Style {
    units: Units;
    comma?: boolean;
    /** The unit of a number alone, if that differs from the unit shown. */
    bare?: Units | undefined;
}
/** The units that a page is written in, also while a reader sees others: its defaults are round in these. */
export declare const ownUnits: ({ units, bare }: Style) => Units;
/** A mixed number as people write it: `121 1/2`. Exact; {@link parseLength} reads it back to the same value. */
export declare const mixed: ({ s, n, d }: Exact) => string;
/**
 * For a page: keeps a mixed number and its unit on one line, with the × after it or the ≥ before it. Otherwise "1 1/8 yd" could
 * read as 1/8 yd. A size of whole numbers stays together too, "81 × 96 in". Other sizes may be longer than a line.
 * A number goes with the word that it counts up: "border 2". A size as people type it stays together: "12 x 40".
 */
export declare const unbroken: (text: string) => string;
/** The same for a size in its own column, which is wide enough for all of it. */
export declare const unbrokenSize: (size: string) => string;
/** A decimal number, rounded to at most this many places, without zeros at the end. */
export declare const decimal: (value: Exact, places: number, comma?: boolean) => string;
/**
 * A length in the style's units, without the unit: `52 1/2`, `133.35`. It is exact if a person can read it (64ths and thirds of
 * an inch, thousandths of a centimetre). Otherwise it is rounded to the nearest 1/16 in or millimetre, with ≈ before it.
 */
export declare const number: (inches: Exact, { units, comma }: Style) => string;
/** A length with its unit: `52 1/2 in`, `133.35 cm`. */
export declare const length: (inches: Exact, style: Style) => string;
/**
 * A length as the reader would type it: in the style's units if that is exact. If not, in the other system's units if that is
 * exact (150 cm on a page in inches). If neither is, it is rounded like {@link length}.
 */
export declare const asTyped: (inches: Exact, style: Style) => string;
