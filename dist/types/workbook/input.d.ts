import type { LooseCut } from '../calculators/calculator.js';
import type { Money, Purchase } from '../ledger/purchase.js';
import type { Exact } from '../measure/exact.js';
import type { Message } from '../measure/message.js';
/** A price as somebody wrote it. It is read where it is needed, so that the list can say what is wrong with it. */
export interface WrittenPrice {
    written: unknown;
}
/** A price as a calculator has read it, in the currency that holds there; or as it was written. */
export type Price = Money | WrittenPrice;
/** A fabric as the page declares it: all is as it was written. */
export interface WorkbookFabric {
    letter: unknown;
    name?: unknown;
    /** Of one yard or metre. */
    price?: unknown;
    /** Its usable width, for a note where it cannot be read; parts say themselves how wide their cloth is. */
    fabricWidth?: unknown;
}
/** What one part of the quilt takes from one fabric. Lengths are exact inches. */
export interface WorkbookPart {
    /** `Binding`, `Borders` … */
    title: Message;
    /** The fabric's letter; empty where the part names none. */
    fabric: string;
    /** Cloth, before rounding. */
    need: Exact;
    /** The cloth's usable width it was reckoned with; 0 where it is not known. */
    width: Exact;
    /** The same as sold, where a wash leaves less of it. */
    sold: Exact;
    /** Inches bought for one inch of washed cloth. */
    washed: Exact;
    /** What is cut from it, for planning several parts together; none where a part has to be cut on its own. */
    pieces: LooseCut[];
    /** Where its fabric has none: of one `per`. */
    price?: Price | undefined;
    /** What its price is of. Default: what the worksheet's fabrics are priced by. */
    per?: 'yd' | 'm' | undefined;
}
/** Something bought by the piece: a package of batting, fat quarters. */
export interface WorkbookItem {
    title: Message;
    /** The letter of the fabric it is of; empty where it is no cloth. */
    fabric: string;
    /** What to buy: an amount, or the words of whoever wrote it. */
    buy: Purchase | Message;
    cost?: Price | undefined;
}
/** All that comes together on the shopping list. */
export interface WorkbookInput {
    fabrics: WorkbookFabric[];
    parts: WorkbookPart[];
    items: WorkbookItem[];
    /** What is wrong elsewhere on the worksheet. */
    troubles: Message[];
    /** What is not on the list yet. */
    unfinished: Message[];
    /** Letters that parts name, whether or not anything is cut from them. */
    named: string[];
}
/** Before anything was gathered. */
export declare const NOTHING: WorkbookInput;
