import { type Exact } from '../measure/exact.js';
/**
 * The fewest lengths of cloth from which all these pieces, none longer than one of them, can be cut. Exact: every way of
 * sharing is tried, so it is for few pieces, such as one border's.
 */
export declare const fewestShared: (pieces: Exact[], cloth: Exact) => number;
