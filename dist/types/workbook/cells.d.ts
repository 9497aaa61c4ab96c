import { type ListCell } from '../ledger/listing.js';
import type { Message } from '../measure/message.js';
import type { PieceOfPart } from './gather.js';
import type { WorksheetAnswer } from './shape.js';
/**
 * The shopping list and the cut list for a spreadsheet. Whoever writes the file writes numbers as numbers: a length in the
 * reader's units, money without its currency, and of what is bought the amount; its unit has a cell of its own.
 */
export declare const worksheetCells: (answer: WorksheetAnswer, notes: Message[], pieces: PieceOfPart[]) => ListCell[][];
