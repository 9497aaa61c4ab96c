import { type Exact } from '../measure/exact.js';
/** How far equal strips reach, sewn end to end; each join uses up so much. */
export declare const reachOf: (count: number, strip: Exact, loss: Exact) => Exact;
/** The fewest equal strips that reach a length, joined; undefined where a join uses up a whole strip. */
export declare const fewest: (reach: Exact, strip: Exact, loss: Exact) => number | undefined;
