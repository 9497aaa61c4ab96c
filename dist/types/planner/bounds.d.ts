/** A piece as the bounds see it: its sizes on the grid, and whether it also fits turned. */
interface Bounded {
    width: number;
    height: number;
    count: number;
    turn: boolean;
}
/**
 * No plan can need less than this: a length of cloth, or a number of sheets if they have a height. Each piece counts as its weight
 * across times its weight down. If it may be turned, the lighter of its two directions counts.
 */
export declare const clothBound: (pieces: Bounded[], width: number, height?: number) => number;
export {};
