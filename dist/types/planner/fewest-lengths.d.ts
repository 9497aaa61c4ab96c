import { type Exact } from '../measure/exact.js';
/**
 * The fewest lengths of cloth that give all these pieces. No piece may be longer than one length. It is exact, because it tries
 * every way. So use it for a few pieces only, such as those of one border.
 */
export declare const fewestLengths: (pieces: Exact[], cloth: Exact) => number;
