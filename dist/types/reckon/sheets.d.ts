import { type Exact } from '../measure/exact.js';
import type { Purchase } from '../measure/shop.js';
import type { CuttingBook } from './cutting.js';
/** Cloth of a fixed size that a list is cut from, as a wash leaves it. */
export interface Sheet {
    width: Exact;
    height: Exact;
    name: string;
    /** Its size as it is sold, where the name does not say it. */
    size: string;
}
/** So many of them, to buy. */
export declare const sheets: ({ height, name, size }: Sheet, count: number) => Purchase;
/** Sheets by their names, or a size written out; undefined for cloth by length. */
export declare const sheetOf: (book: CuttingBook, kept: Exact) => Sheet | undefined;
