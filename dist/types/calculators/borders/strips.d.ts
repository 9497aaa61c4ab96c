import type { Cloth } from '../../ledger/cloth.js';
import { type Quantity } from '../../ledger/quantity.js';
import type { Message } from '../../measure/message.js';
import { type BorderRow, type BordersLedger, type Plan } from './shape.js';
import type { Piece } from './top.js';
/** Pieces of one length. */
interface Lengths {
    length: Quantity;
    count: number;
}
/** Pieces of one border with the same cut width. All sizes are those that are really cut. */
export interface Lot {
    width: Quantity;
    pieces: Lengths[];
}
/**
 * The pieces of a border by their cut width, in the sizes of the cut list. A mark may be below the exact size, by less than anybody
 * can cut. Then the exact size counts, so that the cloth is enough for both.
 */
export declare const lotsOf: (pieces: Piece[], mark: Quantity) => Lot[];
/** One way to cut pieces: how the strips were counted, and the cloth for them. */
export interface WorkedPlan {
    plan: Plan;
    strips: number;
    joins: number;
    /** As bought, before the wash. */
    fabric: Quantity;
    how: Message;
    /** How the cloth was got, if its formula does not say it. */
    longest?: Message | undefined;
}
export declare const countOf: <Key extends string>(things: Record<Key, number>[], key: Key) => number;
/** Strips parallel to the selvage. None if one is wider than the cloth. */
export declare const along: ({ inputs }: BordersLedger, lots: Lot[], { width, kept, toBuy }: Cloth) => WorkedPlan[];
/** Every way to cut a border that this cloth allows: joined, separate, along. `row` is the row for the number of strips. */
export declare const plansFor: (ledger: BordersLedger, lots: Lot[], cloth: Cloth, row: BorderRow) => WorkedPlan[];
/**
 * The plan to use, or undefined if this grain has none. Across the cloth it is the plan with fewer strips (or less cloth, if strips
 * have two widths), then the one with fewer joins. If both are equal, the joined plan is used, unless pieces have to be kept apart.
 */
export declare const bestPlan: (plans: WorkedPlan[], grain: "across" | "along") => WorkedPlan | undefined;
export {};
