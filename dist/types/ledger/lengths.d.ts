import { type Exact } from '../measure/exact.js';
import { type Style } from '../measure/format.js';
import type { Units } from '../measure/units.js';
import { type About, type Field } from './field.js';
/**
 * Reads a length of any size and sign; a bare number is in the page's units, be it a number or text. One that was reckoned is
 * taken as it is. Throws a `Refusal`.
 */
export declare const readLength: (raw: unknown, style: Style) => Exact;
/** Reads a length that a calculator wrote, with its unit. */
export declare const ownLength: (text: string) => Exact;
interface Limits {
    /** It may be 0. */
    zero?: true | undefined;
    /** Default 1000 in. */
    most?: string | undefined;
}
export declare const lengthField: ({ zero, most, ...about }?: About & Limits) => Field<Exact>;
/** One side of a quilt: not both of them, and no inches with the sign of feet. */
export declare const sideField: (about?: About) => Field<Exact>;
/** The same for several lengths: one unit holds for all of them. */
export declare const allInUnit: (text: string, unit: Units) => string;
export declare const LONGEST_LIST = 12;
/** Several lengths, with commas between; where each has a cell of its own, a place between two commas is not left out. */
export declare const lengthsField: ({ most, each, ...about }: About & Limits & {
    each?: true;
}) => Field<Exact[]>;
/** The same with a cell for each, of which there may be none. */
export declare const lengthCellsField: (about?: About & Limits) => Field<Exact[] | undefined> & {
    each: true;
};
/** Two sides: `60 x 80`. */
export declare const sizeField: (about: About) => Field<[Exact, Exact]>;
export {};
