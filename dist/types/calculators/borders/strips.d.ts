import type { Cloth } from '../../ledger/cloth.js';
import { type Quantity } from '../../ledger/quantity.js';
import type { Message } from '../../measure/message.js';
import { type BorderRow, type BordersLedger, type Plan } from './shape.js';
import type { Piece } from './top.js';
/** So many pieces of one length. */
interface Lengths {
    length: Quantity;
    count: number;
}
/** Pieces of one border that are cut to the same width; all sizes are those that are really cut. */
export interface Lot {
    width: Quantity;
    pieces: Lengths[];
}
/**
 * A border's pieces by their cut width, in the sizes that the cut list gives. A mark may lie below a size, by less than
 * anybody can cut: then the size itself counts, so that cloth is never short of either.
 */
export declare const lotsOf: (pieces: Piece[], mark: Quantity) => Lot[];
/** One way to cut pieces: how the strips were counted, and the cloth they take. */
export interface WorkedPlan {
    plan: Plan;
    strips: number;
    joins: number;
    /** As bought, before the wash. */
    fabric: Quantity;
    how: Message;
    /** How the cloth was got, where its formula does not say it. */
    longest?: Message | undefined;
}
export declare const countOf: <Key extends string>(things: Record<Key, number>[], key: Key) => number;
/** Strips parallel to the selvage; none where one is wider than the cloth. */
export declare const along: ({ inputs }: BordersLedger, lots: Lot[], { width, kept, toBuy }: Cloth) => WorkedPlan[];
/** Every way to cut a border that this cloth allows: joined, separate, along. `row` is to hold how many strips it takes. */
export declare const plansFor: (ledger: BordersLedger, lots: Lot[], cloth: Cloth, row: BorderRow) => WorkedPlan[];
/**
 * The plan to use; undefined where there is none for this grain. Across the cloth it is the one with fewer strips (less
 * cloth, where strips have two widths), then with fewer joins; a tie goes to the joined one, where nothing has to be kept
 * apart.
 */
export declare const bestPlan: (plans: WorkedPlan[], grain: "across" | "along") => WorkedPlan | undefined;
export {};
