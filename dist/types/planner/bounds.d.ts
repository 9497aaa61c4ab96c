/** A piece as the bounds see it: its sizes on the grid, and whether it also fits turned. */
interface Bounded {
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
export {};
