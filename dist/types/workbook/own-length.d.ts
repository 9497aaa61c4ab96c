import type { Planner } from '../ledger/planning.js';
import { type LaidPlan } from '../ledger/strips.js';
import type { WorkbookPart } from './input.js';
import { type Stock } from './own-cloth.js';
import type { PlannedTogether, WorksheetLedger } from './shape.js';
import { type Length } from './together.js';
/** What is left to buy of cloth by length, if own cloth is cut first. */
export interface LeftToBuy {
    lengths: Length[];
    laid: LaidPlan | undefined;
    own: PlannedTogether[];
}
/**
 * What is left to buy for the parts of one cloth if a reader's own cloth is cut first. Undefined if that buys no less than without
 * it.
 */
export declare const leftToBuy: (ledger: WorksheetLedger, parts: WorkbookPart[], without: Length[], stock: Stock, plan: Planner) => LeftToBuy | undefined;
