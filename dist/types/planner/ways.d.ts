import type { Lot } from './fill.js';
import { type Found } from './search.js';
/**
 * The layout that {@link search} finds. For sheets it tries further ways. Otherwise pieces that may be turned could take more sheets
 * than the same pieces that may not.
 */
export declare function searchWays(lots: Lot[], width: number, height: number | undefined, bound: number, cheaper: (used: number) => number): Generator<number, Found>;
