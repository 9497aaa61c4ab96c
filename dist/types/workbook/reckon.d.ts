import { type Input, type Reckoning } from '../ledger/ledger.js';
import type { Planner } from '../ledger/planning.js';
import type { WorkbookInput } from './input.js';
import { worksheetFields, type WorksheetAnswer, type WorksheetLedger } from './shape.js';
/**
 * One shopping list from all the parts of a quilt: each fabric's parts are added before they are rounded, and planned
 * together where that saves cloth; with prices, and with bolts where kits are cut. A part whose fabric was not declared
 * still gets its line.
 */
export declare const reckonOn: (ledger: WorksheetLedger, input: WorkbookInput, plan: Planner) => WorksheetAnswer;
/** The shopping list of what was gathered from calculators. */
export declare const reckon: (fields: Input<typeof worksheetFields> | null, input: WorkbookInput, plan?: Planner) => Reckoning<WorksheetAnswer>;
