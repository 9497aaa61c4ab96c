import type { WorksheetInput } from '../../reckon/worksheet.js';
import type { QuiltSheet } from '../../sheet/sheet.js';
import type { Fabrics } from './fabrics.js';
import type { Piece } from './shopping.js';
export type Gathered = Pick<WorksheetInput, 'fabrics' | 'parts' | 'items' | 'troubles' | 'unfinished' | 'named'>;
/** What all parts take from which fabric, what of it is bought by the piece, and every piece to cut. */
export declare const gather: (parts: QuiltSheet[], fabrics: Fabrics) => {
    gathered: Gathered;
    pieces: Piece[];
};
