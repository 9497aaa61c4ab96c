import { Purchase } from '../../ledger/purchase.js';
import { type Exact } from '../../measure/exact.js';
import { type CuttingLedger, type Sheet } from './shape.js';
/** A number of sheets to buy. */
export declare const sheetsToBuy: ({ kind, sold, length }: Sheet, count: number) => Purchase;
/** Reads the name of a sheet, or a size. Undefined means cloth by length. */
export declare const sheetOf: (ledger: CuttingLedger, kept: Exact) => Sheet | undefined;
