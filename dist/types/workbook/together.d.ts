import type { Planner } from '../ledger/planning.js';
import { type LaidPlan } from '../ledger/strips.js';
import { type Exact } from '../measure/exact.js';
import type { Message } from '../measure/message.js';
import type { WorkbookPart } from './input.js';
import type { WorksheetLedger } from './shape.js';
/** What is cut from one length of cloth, and how long that is before rounding. */
export interface Length {
    parts: WorkbookPart[];
    need: Exact;
}
/** The lengths to buy for groups of parts, each of which needs to be in one length. */
export declare const lengthsOf: ({ values: { increment } }: WorksheetLedger, lengths: Length[]) => Length[];
/**
 * The lengths to buy for several parts of one cloth. Parts are planned together if that takes less than one after the other. A
 * part that is cut as its own plan says still takes no more than its pieces need.
 */
export declare const planTogether: (ledger: WorksheetLedger, parts: WorkbookPart[], plan: Planner, cloth: Message) => {
    lengths: Length[];
    laid?: LaidPlan;
};
