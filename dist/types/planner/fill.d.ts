/** Equal pieces that a search keeps together, in whole steps of the grid. */
export interface Lot {
    /** The piece's place in the list that was asked for. */
    piece: number;
    width: number;
    height: number;
    count: number;
    /** Whether it lies turned by a quarter already, fitting only so. */
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
/** Part of a sheet, from edge to edge; `times` equal ones lie below each other, the blocks being those of the first. */
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
    /** Area of what found no place; 0 when everything did. */
    unplaced: number;
}
/** How the lots are put down: what a search varies. */
export interface Recipe {
    /** The order in which lots are offered to every gap. */
    order: number[];
    /** Lots that are offered turned first. */
    turned: boolean[];
    /** Lots beside which the cloth is cut lengthwise first, where either cut would do. */
    lengthwise: boolean[];
}
/**
 * Puts lots down by a recipe: each gap takes the first lot that fits it exactly, else exactly one way, else at all; a cut
 * through the gap then leaves two smaller ones. Whatever it lays out can therefore be cut edge to edge.
 *
 * @param height of a sheet; cloth without end has none.
 */
export declare const filler: (lots: Lot[], width: number, height?: number) => {
    area: number;
    effort: () => number;
    /** Lays everything out within a length of cloth, or within a number of sheets, as far as it goes. */
    layOut: (by: Recipe, within: number, inStrips: boolean) => Layout;
};
export {};
