import type { Planner } from '../ledger/planning.js';
import type { Declared, Group } from './parts.js';
import type { WorksheetLedger } from './shape.js';
import type { CountedItem } from './sums.js';
/** The lines of a fabric that is bought in sheets: one for all parts that are cut from the same ones. */
export declare const sheetLinesOf: (ledger: WorksheetLedger, declared: Declared[], group: Group, plan: Planner) => CountedItem[];
