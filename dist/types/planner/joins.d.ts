import { type Exact } from '../measure/exact.js';
/** How far equal strips reach when sewn end to end. Each join uses up `loss`. */
export declare const reachOf: (count: number, strip: Exact, loss: Exact) => Exact;
/** The fewest equal strips that reach a length when joined, or undefined if a join uses up a whole strip. */
export declare const fewest: (reach: Exact, strip: Exact, loss: Exact) => number | undefined;
