import type { Exact } from '../../measure/exact.js';
import { type BordersLedger } from './shape.js';
import type { GrowingTop, Widths } from './top.js';
/** The last border, as wide as the wanted size takes; it may be nothing on an axis that has its size. */
export declare const lastBorder: (ledger: BordersLedger, top: GrowingTop, wanted: [Exact, Exact]) => Widths;
