import { type TemplateResult } from 'lit';
import type { Answer } from '../ledger/answer.js';
import { type Listing } from '../ledger/listing.js';
import type { Picture } from '../ledger/picture.js';
import type { Teller } from '../words/teller.js';
import type { Swatches } from './swatch.js';
/** Lets long words break between their parts, or in the middle, so that they do not widen a list on a narrow page. */
export declare const parted: (text: string) => string;
/** A text of a list, or a cell to write in. */
export type Shown = string | TemplateResult;
/** A ruled table of texts and cells. */
export declare const ruled: (caption: string, head: string[], rows: Shown[][]) => TemplateResult;
/** A ruled table with its caption. */
export declare const listing: ({ caption, head, rows }: Listing, t: Teller) => TemplateResult;
/** The cut list, if there is anything to cut. */
export declare const cutList: ({ cuts }: Answer, t: Teller) => unknown;
/** Drawings with their captions, in the cloth of these swatches. */
export declare const figures: (pictures: Picture[], t: Teller, swatches?: Swatches) => TemplateResult[];
