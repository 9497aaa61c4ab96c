import { type TemplateResult } from 'lit';
import { type Picture } from '../drawing/picture.js';
import type { Answer } from '../reckon/book.js';
import type { Listing } from './calculator.js';
/** A ruled table with its caption. */
export declare const listing: ({ caption, head, rows }: Listing) => TemplateResult;
/** What to cut, where anything is. */
export declare const cutList: ({ cuts }: Answer) => unknown;
export declare const figures: (pictures: Picture[]) => TemplateResult[];
