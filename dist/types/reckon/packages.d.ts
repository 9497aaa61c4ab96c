import type { Exact } from '../measure/exact.js';
import type { Style } from '../measure/format.js';
import type { Units } from '../measure/units.js';
/** A package of batting, as its label or a shop's list names it. */
export interface Package {
    name: string;
    width: Exact;
    length: Exact;
    price?: Exact;
    /** The same as it was written, with its currency. */
    priced?: string | undefined;
}
/** A list as text, as {@link readPackages} reads it. */
export declare const writePackages: (raw: unknown) => string;
/**
 * Reads a list of packages: text with semicolons between (`small 40 x 50 @ 12.50; large 90 x 100 @ 29`), or an array of
 * such texts or of objects with `name`, `width`, `length` and perhaps `price`. Throws a `Refusal` that names the
 * entry it cannot read.
 */
export declare const readPackages: (raw: unknown, style: Style) => Package[];
/** The list with this unit at every size that names none. */
export declare const packagesInUnit: (list: string, unit: Units) => string;
/** A package, and whether it covers what is needed. */
export interface RankedPackage extends Package {
    fits: boolean;
    /** It covers it only turned. */
    turned: boolean;
}
/** Those that fit first; then those with the least price, and after them those without one by area. */
export declare const rankPackages: (packages: Package[], need: {
    width: Exact;
    length: Exact;
}) => RankedPackage[];
