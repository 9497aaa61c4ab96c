import { type Exact } from '../measure/exact.js';
import type { Cut } from './purchase.js';
import type { CutStrip } from './strips.js';
/**
 * Cloth that is enough whatever a plan comes to: strips of one kind of piece each, one below the other. It is known at once,
 * and says something while a plan that may take less is made. Undefined where a piece does not fit on the cloth.
 */
export declare const roughly: (cuts: Cut[], cloth: Exact) => {
    length: Exact;
    strips: CutStrip[];
} | undefined;
