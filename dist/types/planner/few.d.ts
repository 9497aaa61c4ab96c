import type { Layout, Lot } from './fill.js';
/**
 * The layout of a few pieces that uses least, by trying every way: each share of the pieces is one piece, or two shares
 * with a cut between them. Nothing where that would take too long.
 *
 * @param height of a sheet; cloth bought by length has none.
 * @param used by a layout that is known: no other is given where none uses less.
 * @param done is yielded every few milliseconds.
 */
export declare function leastOfFew(lots: Lot[], width: number, height: number | undefined, used: number, done: number): Generator<number, Layout | undefined>;
