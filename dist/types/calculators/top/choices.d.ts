import type { Size } from '../../ledger/quilt.js';
import { type Exact } from '../../measure/exact.js';
import { type Sewn } from './sides.js';
/** A number of blocks each way that comes near to a wanted size. Lengths are exact inches. */
export interface BlockChoice {
    across: number;
    down: number;
    /** All blocks. On point, those in the rows between count too. */
    blocks: number;
    /** The finished size, with its borders. */
    finished: Size;
    /** How much larger than wanted. Less than 0 where it is smaller. */
    over: Size;
    /** A further border, at each side and at each end, that would make it exactly as wide and as long as wanted; 0 where it is large enough. */
    border: {
        side: Exact;
        end: Exact;
    };
}
/** The size that is wanted, and all borders together on one side. */
export interface Wanted extends Size {
    border: Exact;
}
/** The most blocks each way. */
export declare const MOST_BLOCKS = 100;
/**
 * The numbers of blocks that come nearest to a wanted size, best first: the fewest that reach it, then those that miss it one way
 * or both, by the border that they need. Empty if no number of blocks reaches it.
 */
export declare const blockChoices: ({ width, length, border }: Wanted, sewn: Sewn) => BlockChoice[];
