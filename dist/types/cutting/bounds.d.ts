/**
 * A way of weighing sizes under which whatever fits side by side in `whole` weighs at most `most` (a dual feasible
 * function). The sum of the weights then bounds what any plan needs, often better than the sizes themselves do.
 */
export interface Weighing {
    weigh: (size: number) => number;
    most: number;
}
/** The ways that have proved useful: the size itself, sizes with a threshold, and how many fit beside each other. */
export declare const weighings: (sizes: number[], whole: number) => Weighing[];
/** No plan cuts so many pieces of these sizes from fewer than this many lengths of `whole`. */
export declare const loadBound: (sizes: number[], counts: number[], whole: number) => number;
/** A piece as the bounds see it: its sizes on the grid, and whether it also fits turned. */
export interface Bounded {
    width: number;
    height: number;
    count: number;
    turn: boolean;
}
/**
 * What no plan can do with less than: a length of cloth, or a number of sheets when they have a height. Each piece
 * counts as what it weighs across times what it weighs down, the lighter way round where it may be turned.
 */
export declare const clothBound: (pieces: Bounded[], width: number, height?: number) => number;
