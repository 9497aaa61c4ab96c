import { type TemplateResult } from 'lit';
import type { Face } from '../../face/face.js';
import type { Good } from '../../face/outcome.js';
import type { WorksheetAnswer } from '../../workbook/shape.js';
import type { PieceOfPart } from '../../workbook/gather.js';
/** Whether a text is a colour. A server cannot know that, so there every text counts as one. */
export declare const isColour: (swatch: string) => boolean;
/** Every fabric with its letter, its name and its amounts, and a box to tape a swatch into. */
export declare const keyOf: ({ answer, t }: Good<WorksheetAnswer>, swatches: Map<string, string>) => unknown;
/** The requirement sheet: what to buy, the fabric key, what to cut from which fabric, and every part's drawings. */
export declare const requirementSheet: ({ answer, reckoning, t }: Good<WorksheetAnswer>, about: {
    parts: Face[];
    pieces: PieceOfPart[];
    key: unknown;
    joint: unknown;
    size: string;
}) => TemplateResult;
