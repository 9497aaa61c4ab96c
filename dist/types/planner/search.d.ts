import { type Layout, type Lot } from './fill.js';
/** A plan on the grid, and the least that any plan can need. */
export interface Found {
    layout: Layout;
    bound: number;
}
/**
 * Looks for the layout that uses least. It keeps a plan in strips, unless one with another order of cuts uses less.
 * Yields its progress from 0 to 1 every few milliseconds.
 *
 * @param height of a sheet; cloth bought by length has none.
 * @param bound the least that any layout can need, in steps of the grid or in sheets.
 * @param cheaper how much another order of cuts may use at most to be worth it, if strips use `used`.
 * @param worth the share of the usual effort that it may take.
 */
export declare function search(lots: Lot[], width: number, height: number | undefined, bound: number, cheaper: (used: number) => number, worth?: number): Generator<number, Found>;
