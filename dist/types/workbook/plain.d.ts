import { type Input, type Reckoning } from '../ledger/ledger.js';
import type { Planner } from '../ledger/planning.js';
import { worksheetFields, type WorksheetAnswer } from './shape.js';
/** A fabric as the page declares it. */
export interface FabricInput {
    letter: string;
    name?: string | undefined;
    /** What it is bought in, if that is not cloth by length: `fat-quarter`, or a size. Then its price is of one of these. */
    sheet?: unknown;
    /** What the reader has of it: `9 fat quarters`, `1 1/2 yd`, `9 x 40 in`, or several of these. */
    atHand?: unknown;
    /** Of one yard or metre. */
    price?: unknown;
    /** Its usable width. It is only for a note if it cannot be read: each part says how wide its cloth is. */
    fabricWidth?: unknown;
}
/**
 * What one part of the quilt takes from one fabric. Its lengths come from the result of a calculator, so they are exact inches. The
 * worksheet's `units` do not matter.
 */
export interface PartInput {
    /** `Binding`, `Borders` … */
    title: string;
    /** The fabric's letter; empty where the part names none. */
    fabric: string;
    /** Exact inches of cloth, before rounding. It does not count with `sheet`. */
    need: string;
    /** The cloth's usable width it was reckoned with, exact inches. */
    width?: string;
    /** The width as sold, if a wash leaves less of it. Default `width`. */
    sold?: string;
    /** The pieces, for planning several parts together. Absent if the part has to be cut on its own. */
    pieces?: {
        piece?: string;
        width: string;
        length: string;
        count: number;
        turn: boolean;
    }[];
    /**
     * What it leaves beside pieces that have to lie as its result says, like the piece beside the last panel of a backing: exact inches
     * of washed cloth from where its cloth begins.
     */
    leaves?: {
        x: string;
        y: string;
        width: string;
        height: string;
    }[];
    /**
     * Ways to cut it from what other parts leave, the best first, each with its pieces. If that is possible, nothing is bought for it:
     * see `fromLeftovers` of the result.
     */
    fromLeftover?: NonNullable<PartInput['pieces']>[];
    /** What its pieces are cut from, in place of cloth by length: `fat-quarter`, or a size in inches. The parts of a fabric share them. */
    sheet?: string;
    /** The week of a sew-along in which it is cut. */
    week?: number;
    /** Inches bought for one inch of washed cloth. Default 1. */
    washed?: string;
    /** Where its fabric has none: of one `per`. */
    price?: unknown;
    /** `yd` or `m`: what its price is of. Default: what the worksheet's fabrics are priced by. */
    per?: string;
}
/** Something bought by the piece: a package of batting, fat quarters. */
export interface ItemInput {
    title: string;
    /** The letter of its fabric, if it is cloth. */
    fabric?: string | undefined;
    /** What to buy: `5 fat quarters`. */
    text: string;
    /** A decimal number, with its currency or without. */
    cost?: string | undefined;
}
/** Input of {@link reckonWorksheet}. */
export type WorksheetInput = Input<typeof worksheetFields> & {
    fabrics?: FabricInput[];
    parts?: PartInput[];
    items?: ItemInput[];
    /** What is wrong elsewhere on the worksheet, in sentences. */
    troubles?: string[];
    /** What is not on the list yet, in sentences. */
    unfinished?: string[];
    /** Letters that parts name, whether or not anything is cut from them. */
    named?: string[];
};
/** The shopping list of a plain input. */
export declare const reckonPlain: (input?: WorksheetInput | null, plan?: Planner) => Reckoning<WorksheetAnswer>;
