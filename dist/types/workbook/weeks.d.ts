import type { Listing } from '../ledger/listing.js';
import type { WorksheetAnswer } from './shape.js';
/**
 * What each part cuts from which sheets, and how many of them it opens: week by week, and in a week in the order of the parts.
 * Undefined if no fabric in sheets is for several parts.
 */
export declare const weekByWeek: ({ items }: Pick<WorksheetAnswer, "items">) => Listing | undefined;
