import type { Layout, Lot } from './fill.js';
/**
 * The layout of a few pieces that uses least. It tries every way: each group of pieces is one piece, or two groups with a cut
 * between them. Undefined if that would take too long.
 *
 * @param height of a sheet; cloth bought by length has none.
 * @param used by a layout that we know. Only a layout that uses less is returned.
 * @param done is the progress that it yields every few milliseconds.
 */
export declare function leastOfFew(lots: Lot[], width: number, height: number | undefined, used: number, done: number): Generator<number, Layout | undefined>;
