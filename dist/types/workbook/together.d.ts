import type { Planner } from '../ledger/planning.js';
import { type LaidPlan } from '../ledger/strips.js';
import { type Exact } from '../measure/exact.js';
import type { Cloth, CuttingPlan } from '../planner/plan.js';
import type { WorkbookPart } from './input.js';
import type { WorksheetLedger } from './shape.js';
/** Cloth of some parts in one piece, and how long that is before rounding. */
export interface Stretch {
    parts: WorkbookPart[];
    need: Exact;
    /** How they are laid out together. Otherwise it is one part, which says itself how to cut it. */
    laid?: {
        plan: CuttingPlan;
        on: Cloth;
    };
}
/** One length of cloth: stretches of it, one after the other. */
export interface Length extends Stretch {
    stretches: Stretch[];
}
/** The part of a ledger that this needs. */
type Stepped = Pick<WorksheetLedger, 'values'>;
export declare const alone: (part: WorkbookPart) => Stretch;
/** The lengths to buy for stretches of cloth, each of which needs to be in one length. */
export declare const lengthsOf: ({ values: { increment } }: Stepped, stretches: Stretch[]) => Length[];
/** How parts of one cloth are cut. */
export interface Together {
    lengths: Length[];
    laid?: LaidPlan;
    /** A plan that may save cloth is not ready yet. */
    isPlanning?: boolean;
}
/**
 * The lengths to buy for several parts of one cloth. Parts are planned together if that takes less than one after the other. A
 * part that is cut as its own plan says still takes no more than its pieces need.
 */
export declare const planTogether: (ledger: Stepped, parts: WorkbookPart[], plan: Planner) => Together;
export {};
