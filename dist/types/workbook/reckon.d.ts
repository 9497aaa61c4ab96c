import { type Input, type Reckoning } from '../ledger/ledger.js';
import type { Planner } from '../ledger/planning.js';
import type { WorkbookInput } from './input.js';
import { worksheetFields, type WorksheetAnswer, type WorksheetLedger } from './shape.js';
/**
 * One shopping list for all parts of a quilt. The parts of a fabric are added up before rounding, and planned together if that
 * saves cloth. The list has prices, and bolts if a shop cuts kits. A part whose fabric is not declared still gets a line.
 */
export declare const reckonOn: (ledger: WorksheetLedger, input: WorkbookInput, plan: Planner) => WorksheetAnswer;
/** The shopping list of what was gathered from calculators. */
export declare const reckon: (fields: Input<typeof worksheetFields> | null, input: WorkbookInput, plan?: Planner) => Reckoning<WorksheetAnswer>;
