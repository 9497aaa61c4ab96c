import { type TemplateResult } from 'lit';
import type { Style } from '../../measure/format.js';
import type { WorksheetResult } from '../../reckon/worksheet.js';
import type { QuiltSheet } from '../../sheet/sheet.js';
import { type Piece } from './shopping.js';
/** Every fabric with its letter, its name and its amounts, and a box to tape a swatch into. */
export declare const fabricKey: (result: WorksheetResult, swatches: Map<string, string>) => unknown;
/** The requirement sheet: what to buy, the fabric key, what to cut from which fabric, and every part's drawings. */
export declare const requirementSheet: (result: WorksheetResult, { parts, pieces, key, joint, size, style, }: {
    parts: QuiltSheet[];
    pieces: Piece[];
    key: unknown;
    joint: unknown;
    size: string;
    style: Style;
}) => TemplateResult;
