import { type Exact } from '../measure/exact.js';
import { type Style } from '../measure/format.js';
import type { Units } from '../measure/units.js';
import { type About, type Field } from './field.js';
/**
 * Reads a length of any size and sign. A number alone is in the page's units, as a number or as text. An exact number stays as it
 * is. Throws a `Refusal`.
 */
export declare const readLength: (raw: unknown, style: Style) => Exact;
/** Reads a length from the code, which has its unit. */
export declare const ownLength: (text: string) => Exact;
/** The trade's usual length, as it is where the page's own units are used. */
export declare const usualLength: (usual: Record<Units, string>, style: Style) => Exact;
interface Limits {
    /** 0 is allowed. */
    zero?: true | undefined;
    /** Default 1000 in. */
    most?: string | undefined;
}
export declare const lengthField: ({ zero, most, ...about }?: About & Limits & Pick<Field, "example">) => Field<Exact>;
/** One side of a quilt. Both sides together are wrong here, and so are inches with the sign of feet. */
export declare const sideField: (about?: About) => Field<Exact>;
/** The same for several lengths. One unit counts for all of them. */
export declare const allInUnit: (text: string, unit: Units) => string;
export declare const LONGEST_LIST = 12;
/** Several lengths with commas between them. If each has its own cell, an empty place between two commas counts too. */
export declare const lengthsField: ({ most, each, ...about }: About & Limits & {
    each?: true;
}) => Field<Exact[]>;
/** The same with a cell for each. There may be none. */
export declare const lengthCellsField: (about?: About & Limits) => Field<Exact[] | undefined> & {
    each: true;
};
/** Two sides: `60 x 80`. */
export declare const sizeField: (about: About) => Field<[Exact, Exact]>;
export {};
