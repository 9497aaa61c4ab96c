import { type TemplateResult } from 'lit';
import type { Listing } from '../../ledger/listing.js';
import { type Swatches } from '../../face/swatch.js';
import type { Face } from '../../face/face.js';
import type { Good } from '../../face/outcome.js';
import type { WorksheetAnswer } from '../../workbook/shape.js';
import type { PieceOfPart } from '../../workbook/gather.js';
/** Every fabric with its letter, its name and its amounts, and a box to tape a swatch into. */
export declare const keyOf: ({ answer, t }: Good<WorksheetAnswer>, swatches: Swatches) => unknown;
/** The requirement sheet: what to buy, the fabric key, what to cut from which fabric, and every part's drawings. */
export declare const requirementSheet: ({ answer, reckoning, t }: Good<WorksheetAnswer>, about: {
    parts: Face[];
    pieces: PieceOfPart[];
    quilt: unknown;
    key: unknown;
    joint: unknown;
    lists: Listing[];
    size: string;
}) => TemplateResult;
