import { type Quantity } from '../../ledger/quantity.js';
import { type Exact } from '../../measure/exact.js';
import { type BordersLedger, type Corners, type PieceKind } from './shape.js';
/** A border's finished widths: of its sides, and of top and bottom (`end`). */
export interface Widths {
    side: Quantity;
    end: Quantity;
}
/** Equal pieces of one border, in exact cut sizes; each size is a row. */
export interface Piece {
    piece: PieceKind;
    count: number;
    length: Quantity;
    width: Quantity;
}
/** The top while borders are sewn on, one after the other; each puts its rows into the ledger. */
export declare class GrowingTop {
    readonly ledger: BordersLedger;
    width: Quantity;
    length: Quantity;
    constructor(ledger: BordersLedger);
    /**
     * What to cut for a border, by its number from the inside; from then on the top has it. A cut width that was typed over
     * makes it as wide as that finishes.
     */
    sew(number: number, corners: Corners, wanted: Widths): {
        pieces: Piece[];
    } & Widths;
    /** How wide a border of its own width at the sides, and at top and bottom, makes the wanted size; can be less than 0. */
    lacking([width, length]: [Exact, Exact]): Widths;
}
