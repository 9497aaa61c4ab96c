import type { Blocks } from '../calculators/top/shape.js';
import type { Exact } from '../measure/exact.js';
import type { Message } from '../measure/message.js';
/** A block of the quilt, as far as the places of the top ask for it. */
export interface PlacedBlock {
    /** How many, as somebody wrote it. Undefined or null if nobody did. An empty text is wrong. */
    count: unknown;
    /** Whether it takes the places that the other blocks leave. */
    fills: boolean;
    /** Its own finished side. Undefined if it follows the top. */
    block: Exact | undefined;
}
/** The blocks of a top as its author wrote them, and as they are now. */
export interface TopBlocks {
    written: Blocks | undefined;
    now: Blocks | undefined;
}
/** Whether a block lies in the places of this top. A block of another size does not: it is for something else. */
export declare const isPlaced: ({ block }: PlacedBlock, { written, now }: TopBlocks) => boolean;
/**
 * How many of each block there are. What the others leave of the places is shared evenly by the blocks that fill them, and those that
 * come first take one more. Undefined if nobody can read a number.
 */
export declare const sharesOf: (places: number, blocks: PlacedBlock[]) => (number | undefined)[];
/** The number that flows to a block from the top, even if somebody wrote another over it. Undefined if none does. */
export declare const flowingCount: (places: number, blocks: PlacedBlock[], of: PlacedBlock) => number | undefined;
/** Says that there are fewer or more blocks than places. Not while a number cannot be read: its block says that itself. */
export declare const unevenOf: (places: number, blocks: PlacedBlock[]) => Message | undefined;
