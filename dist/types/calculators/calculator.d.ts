import type { Answer } from '../ledger/answer.js';
import type { Fields } from '../ledger/field.js';
import type { Input, Reckoning } from '../ledger/ledger.js';
import type { Listing } from '../ledger/listing.js';
import type { Picture } from '../ledger/picture.js';
import type { Cut, Money, Purchase } from '../ledger/purchase.js';
import type { Exact } from '../measure/exact.js';
import type { Message } from '../measure/message.js';
import type { Rectangle } from '../planner/free.js';
import type { CuttingPlan } from '../planner/plan.js';
import type { Sheet } from './cutting/plan-shape.js';
/** Every calculator, by name. */
export type CalculatorName = 'backing' | 'batting' | 'binding' | 'block' | 'borders' | 'cutting' | 'sleeve' | 'top' | 'worksheet';
/** Pieces that may lie beside those of other parts on one cloth. Exact inches. */
export interface LooseCut {
    piece?: Message;
    width: Exact;
    length: Exact;
    count: number;
    turn: boolean;
}
/** What a result takes from one fabric; see the worksheet's parts. */
export interface Take {
    /** The fabric's letter. */
    fabric: string;
    /** Its name, if one calculator uses several fabrics. */
    title?: Message;
    need: Exact;
    /** The cloth's usable width. Default: the result's. */
    width?: Exact;
    /** The usable width as sold, before the wash. Default: the result's. */
    sold?: Exact | undefined;
    /** What is cut from it. */
    cuts: Cut[];
    /** Pieces that may be planned together with those of other parts. Default: the cuts. Empty if they have to lie as the result says. */
    pieces?: LooseCut[];
    /** How its own result lays these pieces, if that says it. */
    plan?: CuttingPlan | undefined;
    /** What it leaves beside pieces that have to lie as the result says, in inches of washed cloth from where its cloth begins. */
    leaves?: Rectangle[] | undefined;
    /** Ways to cut it from what other parts leave, the best first. If that is possible, nothing is bought for it. */
    fromLeftover?: LooseCut[][];
    /** The sheets that it is cut from, in place of cloth by length, and how many it takes by itself. */
    sheets?: {
        sheet: Sheet;
        count: number;
    } | undefined;
    /** The week of a sew-along in which it is cut. */
    week?: number | undefined;
    /** Something bought by the piece, in place of cloth. */
    item?: Purchase;
    cost?: Money | undefined;
}
/** Something that is made several times. */
export interface Making {
    /** Its name, if it has one. */
    title?: Message | undefined;
    count: number;
    /** The pieces of each fabric for so many of them. */
    piecesOf: (count: number) => {
        fabric: string;
        pieces: Omit<LooseCut, 'piece'>[];
    }[];
    oneWay: boolean;
    /** How much a wash leaves of one inch. */
    kept: Exact;
}
/** A calculator: its inputs, its sum, and what to show of the result. It knows no page and no words. */
export interface Calculator<A extends Answer = Answer> {
    /** The name of its folder, its words and its element. */
    name: CalculatorName;
    fields: Fields;
    reckon(input: Input | null): Reckoning<A>;
    /** What it draws. `letters` are the fabrics that the author gave it. */
    draw(answer: A, letters?: string[]): Picture[];
    /** Tables under the drawing. `letters` are the fabrics that the author gave it. */
    lists?(answer: A, letters?: string[]): Listing[];
    /** What to show in large type in place of the amount to buy, with a lead before it. */
    headline?(answer: A): {
        lead: Message;
        large: Message;
    };
    /** Ways that use less, if the shop's stock is not enough. */
    instead?(answer: A): {
        way: Message;
        buy: Purchase;
    }[];
    /** What it takes from which fabric, for a shopping list. Default: all its cloth from one fabric. */
    takes?(answer: A, letters: string[]): Take[];
    /** In a worksheet: the new size of the quilt, for the parts that come after it. */
    finishes?(answer: A): {
        width: Exact;
        length: Exact;
    };
    /** Inputs that do not flow in from a worksheet, because they mean something else here. */
    own?: string[];
    /** What it makes several of, for the question how many of them a reader's own cloth gives. */
    makes?(answer: A): Making;
    /** Whether it buys by the piece, so that its cloth is not added to that of other parts. Default: no. */
    byPiece?(input: Input): boolean;
}
