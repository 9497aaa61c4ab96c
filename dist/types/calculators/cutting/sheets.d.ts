import { Purchase } from '../../ledger/purchase.js';
import { type Exact } from '../../measure/exact.js';
import { type CuttingLedger, type Sheet } from './shape.js';
/** So many of them, to buy. */
export declare const sheetsToBuy: ({ kind, sold, length }: Sheet, count: number) => Purchase;
/** Sheets by their names, or a size written out; undefined for cloth by length. */
export declare const sheetOf: (ledger: CuttingLedger, kept: Exact) => Sheet | undefined;
