import type { ListCell, Listing } from '../ledger/listing.js';
import type { Style } from '../measure/format.js';
import type { PieceOfPart } from './gather.js';
import type { WorksheetAnswer } from './shape.js';
/** Whether cloth is bought of which something may be left. */
export declare const mayLeave: ({ fabrics, items }: Pick<WorksheetAnswer, "fabrics" | "items">) => boolean;
/** What is left over of each fabric. */
export declare const leftoverList: (answer: WorksheetAnswer, style: Style) => Listing;
/** The same for a spreadsheet, a row for each size. */
export declare const leftoverCells: (answer: WorksheetAnswer, style: Style) => ListCell[][];
/** The cut list as it is really cut: pieces that come from what others leave may have other sizes, and another fabric. */
export declare const asCut: (pieces: PieceOfPart[], { fromLeftovers }: Pick<WorksheetAnswer, "fromLeftovers">) => PieceOfPart[];
