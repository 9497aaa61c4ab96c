import type { QuiltSheet } from '../../sheet/sheet.js';
import type { QuiltCutting } from '../cutting/cutting.js';
import { type Fabrics } from './fabrics.js';
/** A quilt's size as it flows from one part to the next. */
interface QuiltSize {
    width?: unknown;
    length?: unknown;
}
/** Lets sizes and settings flow once through the parts. One pass: nothing flows back. */
export declare const flow: (worksheet: QuiltSheet, parts: QuiltSheet[], fabrics: Fabrics) => {
    size: QuiltSize;
    caution: string;
    lists: QuiltCutting[];
};
export {};
