import { type TemplateResult } from 'lit';
import type { Picture } from '../ledger/picture.js';
import type { Teller } from '../words/teller.js';
/** Draws to scale, with its dimension lines round it. */
export declare const draw: (picture: Picture, t: Teller) => TemplateResult;
/** The look of a drawing: thin ruled lines in the text's colour, washes of the accent. */
export declare const drawingStyles: import("lit").CSSResult;
