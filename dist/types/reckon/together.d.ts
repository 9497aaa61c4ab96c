import { type Exact } from '../measure/exact.js';
import { type Planner } from './planning.js';
import { laidOut } from './strips.js';
import type { Part } from './worksheet-parts.js';
import type { WorksheetBook } from './worksheet.js';
/** What is cut from one continuous length of cloth, and the cloth it takes before rounding. */
export interface Length {
    parts: Part[];
    need: Exact;
}
/**
 * Several parts of one cloth, in the lengths to buy: all that can be laid out together is, where that takes less than one
 * after the other, and where one is cut as it lies it still takes no more than its pieces need.
 */
export declare const planTogether: (book: WorksheetBook, parts: Part[], plan: Planner, called: string) => {
    lengths: Length[];
    laid?: ReturnType<typeof laidOut>;
};
