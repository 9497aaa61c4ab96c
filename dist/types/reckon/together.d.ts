import { type Exact } from '../measure/exact.js';
import { type Planner } from './cutting.js';
import { laidOut } from './strips.js';
import type { Part } from './worksheet-parts.js';
import type { WorksheetBook } from './worksheet.js';
/** Several parts of one cloth: laid out together where less is then bought than for one after the other. */
export declare const planTogether: (book: WorksheetBook, parts: Part[], plan: Planner | undefined, called: string) => {
    need: Exact;
    laid?: ReturnType<typeof laidOut>;
};
