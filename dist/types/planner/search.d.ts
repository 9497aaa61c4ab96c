import { type Layout, type Lot } from './fill.js';
/** A plan on the grid, and what no plan can do with less than. */
export interface Found {
    layout: Layout;
    bound: number;
}
/**
 * Looks for the layout that uses least. A plan in strips is kept unless one cut in another order uses less.
 * Yields its progress from 0 to 1 every few milliseconds.
 *
 * @param height of a sheet; cloth bought by length has none.
 * @param bound what no layout can do with less than, in steps of the grid or in sheets.
 * @param cheaper how little another order of cutting has to use to save anything, where strips use so much.
 * @param worth the share of the usual effort that it may take.
 */
export declare function search(lots: Lot[], width: number, height: number | undefined, bound: number, cheaper: (used: number) => number, worth?: number): Generator<number, Found>;
