import { type Exact } from '../measure/exact.js';
import type { Cut } from './purchase.js';
import type { CutStrip } from './strips.js';
/**
 * Cloth that is always enough: a strip holds only one kind of piece, and the strips lie below each other. We know it at once, so the
 * page can show it while it makes a plan that may take less. Undefined if a piece does not fit on the cloth.
 */
export declare const roughly: (cuts: Cut[], cloth: Exact) => {
    length: Exact;
    strips: CutStrip[];
} | undefined;
