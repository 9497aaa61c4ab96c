import type { LooseCut, Making } from '../calculators/calculator.js';
import type { Sheet } from '../calculators/cutting/plan-shape.js';
import type { Money, Purchase } from '../ledger/purchase.js';
import type { Exact } from '../measure/exact.js';
import type { Message } from '../measure/message.js';
import type { Rectangle } from '../planner/free.js';
import type { CuttingPlan } from '../planner/plan.js';
/** A price as somebody wrote it. It is read late, so that the list can say what is wrong with it. */
export interface WrittenPrice {
    written: unknown;
}
/** A price that a calculator has read already, with its currency; or one as somebody wrote it. */
export type Price = Money | WrittenPrice;
/** A fabric as the page declares it, with all values as somebody wrote them. */
export interface WorkbookFabric {
    letter: unknown;
    name?: unknown;
    /** What it is bought in, if that is not cloth by length: `fat-quarter`, or a size. */
    sheet?: unknown;
    /** Of one yard or metre, or of one sheet. */
    price?: unknown;
    /** What the reader has of it, as she wrote it. Undefined if nobody asks. */
    atHand?: unknown;
    /** Its usable width. It is only for a note if it cannot be read: each part says how wide its cloth is. */
    fabricWidth?: unknown;
}
/** What one part of the quilt takes from one fabric. Lengths are exact inches. */
export interface WorkbookPart {
    /** `Binding`, `Borders` … */
    title: Message;
    /** The same with its week, if it has both a name and a week. */
    when: Message;
    /** The week of a sew-along in which it is cut. */
    week?: number | undefined;
    /** The fabric's letter; empty where the part names none. */
    fabric: string;
    /** Cloth, before rounding. */
    need: Exact;
    /** The usable width of the cloth, or 0 if it is not known. */
    width: Exact;
    /** The width as sold, if a wash leaves less of it. */
    sold: Exact;
    /** Inches bought for one inch of washed cloth. */
    washed: Exact;
    /** The pieces, for planning several parts together. None if the part has to be cut on its own. */
    pieces: LooseCut[];
    /** How its own result lays these pieces, if that says it. */
    plan?: CuttingPlan | undefined;
    /** What it leaves beside pieces that have to lie as it says, in inches of washed cloth from where its cloth begins. Only a backing has this. */
    leaves?: Rectangle[] | undefined;
    /** Ways to cut it from what other parts leave, the best first. */
    fromLeftover?: LooseCut[][] | undefined;
    /** The sheets that it is cut from, in place of cloth by length, and how many it takes by itself. */
    sheets?: {
        sheet: Sheet;
        count?: number | undefined;
    } | undefined;
    /** The price of one `per`, or of one sheet, used if the fabric has no price. */
    price?: Price | undefined;
    /** What its price is of. Default: what the worksheet's fabrics are priced by. */
    per?: 'yd' | 'm' | undefined;
}
/** Something bought by the piece: a package of batting, fat quarters. */
export interface WorkbookItem {
    title: Message;
    /** The letter of its fabric, or empty if it is not cloth. */
    fabric: string;
    /** What to buy: an amount, or somebody's own words. */
    buy: Purchase | Message;
    /** Of one, if a calculator has read it. */
    price?: Money | undefined;
    cost?: Price | undefined;
}
/** Blocks that are made, for the question how many of them a reader's own cloth gives. */
export interface WorkbookMaker extends Making {
    title: Message;
}
/** Everything that goes onto the shopping list. */
export interface WorkbookInput {
    fabrics: WorkbookFabric[];
    parts: WorkbookPart[];
    items: WorkbookItem[];
    makers: WorkbookMaker[];
    /** What is wrong elsewhere on the worksheet. */
    troubles: Message[];
    /** What is not on the list yet. */
    unfinished: Message[];
    /** Letters that parts name, whether or not anything is cut from them. */
    named: string[];
}
/** A list with nothing on it. */
export declare const NOTHING: WorkbookInput;
