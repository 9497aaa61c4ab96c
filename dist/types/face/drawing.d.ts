import { type TemplateResult } from 'lit';
import type { Picture } from '../ledger/picture.js';
import type { Teller } from '../words/teller.js';
import { type Swatches } from './swatch.js';
/** Draws to scale, with its dimension lines round it. What is cut from a fabric with a swatch is filled with that. */
export declare const draw: (picture: Picture, t: Teller, swatches?: Swatches) => TemplateResult;
/** The look of a drawing: thin ruled lines in the text's colour, washes of the accent. */
export declare const drawingStyles: import("lit").CSSResult;
