import { type Quantity } from '../../ledger/quantity.js';
/** What the sides of a top come from, besides its number of blocks. */
export interface Sewn {
    block: Quantity;
    sashing: Quantity;
    onPoint: boolean;
    /** Whether there is sashing round the outside too. */
    frame: boolean;
}
/** A side of the top: its blocks, and the sashing between them. */
export declare const sideOf: ({ block, sashing, onPoint, frame }: Sewn, blocks: Quantity) => Quantity;
