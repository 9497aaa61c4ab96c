import { type Exact } from '../../measure/exact.js';
import type { Sheet } from './plan-shape.js';
import { type CuttingLedger } from './shape.js';
/** Reads the name of a sheet, or a size. Undefined means cloth by length. */
export declare const sheetOf: (ledger: CuttingLedger, kept: Exact) => Sheet | undefined;
