import type { Lot } from './fill.js';
import { type Found } from './search.js';
/**
 * The layout that {@link search} finds. Sheets are tried in further ways, so that pieces that may be turned never take
 * more of them than the same pieces that may not.
 */
export declare function searchWays(lots: Lot[], width: number, height: number | undefined, bound: number, cheaper: (used: number) => number): Generator<number, Found>;
