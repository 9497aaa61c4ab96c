import { type ListCell } from '../ledger/listing.js';
import type { Message } from '../measure/message.js';
import type { Style } from '../measure/format.js';
import type { PieceOfPart } from './gather.js';
import type { WorksheetAnswer } from './shape.js';
/**
 * The shopping list, the cut list and what is left over, for a spreadsheet. Numbers stay numbers: a length in the reader's units, money without its
 * currency, the amount of what is bought. The unit of an amount has its own cell.
 */
export declare const worksheetCells: (answer: WorksheetAnswer, notes: Message[], pieces: PieceOfPart[], style: Style) => ListCell[][];
