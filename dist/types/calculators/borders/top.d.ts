import { type Quantity } from '../../ledger/quantity.js';
import { type Exact } from '../../measure/exact.js';
import { type BordersLedger, type Corners, type PieceKind } from './shape.js';
/** The finished widths of a border: of its sides, and of top and bottom (`end`). */
export interface Widths {
    side: Quantity;
    end: Quantity;
}
/** Equal pieces of one border, in exact cut sizes. Each size is a row. */
export interface Piece {
    piece: PieceKind;
    count: number;
    length: Quantity;
    width: Quantity;
}
/** The top, to which the borders are added one after the other. Each puts its rows into the ledger. */
export declare class GrowingTop {
    readonly ledger: BordersLedger;
    width: Quantity;
    length: Quantity;
    constructor(ledger: BordersLedger);
    /**
     * Adds a border, by its number from the inside, and gives what to cut for it. If the reader typed over a cut width, the border is
     * as wide as that cut width finishes.
     */
    sew(number: number, corners: Corners, wanted: Widths): {
        pieces: Piece[];
    } & Widths;
    /** How wide a border has to be at the sides, and at top and bottom, to reach the wanted size. It can be less than 0. */
    lacking([width, length]: [Exact, Exact]): Widths;
}
