/** Equal pieces that a search keeps together, in whole steps of the grid. */
export interface Lot {
    /** The piece's place in the list that was asked for. */
    piece: number;
    width: number;
    height: number;
    count: number;
    /** Whether it is turned by a quarter already, because it fits only that way. */
    over: boolean;
    /** Whether it may be turned by a quarter from here. */
    turn: boolean;
}
/** Equal pieces side by side or stacked. */
export interface Block {
    lot: number;
    turned: boolean;
    x: number;
    y: number;
    across: number;
    down: number;
}
/** Part of a sheet, from edge to edge. `times` equal bands lie below each other; `blocks` are those of the first one. */
interface Band {
    y: number;
    height: number;
    times: number;
    blocks: Block[];
}
export interface Layout {
    /** Cloth bought by length is one sheet. */
    sheets: {
        bands: Band[];
        times: number;
    }[];
    /** Length of cloth used, or how many sheets. */
    used: number;
    /** Area of what found no place; 0 if everything did. */
    unplaced: number;
}
/** How to place the lots. The search changes this. */
export interface Recipe {
    /** The order in which lots are offered to every gap. */
    order: number[];
    /** Lots that are offered turned first. */
    turned: boolean[];
    /** Lots beside which the cloth is cut lengthwise first, if either cut works. */
    lengthwise: boolean[];
}
/**
 * Places lots by a recipe. Each gap takes the first lot that fits it exactly in both directions, or in one, or at all. A cut through
 * the gap then leaves two smaller gaps. So every layout can be cut from edge to edge. This is the innermost loop of every search:
 * it works on plain arrays of numbers, so that it makes few objects.
 */
export declare class Filler {
    #private;
    /** Area of all pieces. */
    readonly area: number;
    /** How many lots were tried in how many gaps: the cost of the search. */
    effort: number;
    /** @param height of a sheet; cloth without end has none. */
    constructor(lots: Lot[], width: number, height?: number);
    /** Places as much as fits on a length of cloth, or on a number of sheets. */
    layOut(by: Recipe, within: number, inStrips: boolean): Layout;
}
export {};
