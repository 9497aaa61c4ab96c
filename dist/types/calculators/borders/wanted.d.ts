import type { Exact } from '../../measure/exact.js';
import { type BordersLedger } from './shape.js';
import type { GrowingTop, Widths } from './top.js';
/** The widths of the last border, which reaches the wanted size. A width is 0 if that direction has its size already. */
export declare const lastBorder: (ledger: BordersLedger, top: GrowingTop, wanted: [Exact, Exact]) => Widths;
