import type { Planner } from '../ledger/planning.js';
import { type LaidPlan } from '../ledger/strips.js';
import { type Exact } from '../measure/exact.js';
import type { Message } from '../measure/message.js';
import type { WorkbookPart } from './input.js';
import type { WorksheetLedger } from './shape.js';
/** What is cut from one continuous length of cloth, and the cloth it takes before rounding. */
export interface Length {
    parts: WorkbookPart[];
    need: Exact;
}
/**
 * Several parts of one cloth, in the lengths to buy: all that can be laid out together is, where that takes less than one
 * after the other, and where one is cut as it lies it still takes no more than its pieces need.
 */
export declare const planTogether: (ledger: WorksheetLedger, parts: WorkbookPart[], plan: Planner, cloth: Message) => {
    lengths: Length[];
    laid?: LaidPlan;
};
