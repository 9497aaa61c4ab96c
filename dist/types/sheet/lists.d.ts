import { type TemplateResult } from 'lit';
import { type Picture } from '../drawing/picture.js';
import type { Answer } from '../reckon/answer.js';
import type { Listing } from './calculator.js';
/** Stands beside what is cut. */
export declare const CUTTER_CAUTION = "Rotary cutter: close the blade after every cut, cut away from yourself, and keep it from children.";
/** Stands under every answer. */
export declare const MEASURE_FIRST = "Amounts are for planning: measure your own cloth and quilt before cutting.";
/** On a narrow sheet the longest word of the trade breaks where it is joined, and widens no list. */
export declare const parted: (text: string) => string;
/** A ruled table with its caption. */
export declare const listing: ({ caption, head, rows }: Listing) => TemplateResult;
/** What to cut, where anything is. */
export declare const cutList: ({ cuts }: Answer) => unknown;
export declare const figures: (pictures: Picture[]) => TemplateResult[];
