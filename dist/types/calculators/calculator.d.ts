import type { Answer } from '../ledger/answer.js';
import type { Fields } from '../ledger/field.js';
import type { Input, Reckoning } from '../ledger/ledger.js';
import type { Listing } from '../ledger/listing.js';
import type { Picture } from '../ledger/picture.js';
import type { Cut, Money, Purchase } from '../ledger/purchase.js';
import type { Exact } from '../measure/exact.js';
import type { Message } from '../measure/message.js';
/** Every calculator, by name. */
export type CalculatorName = 'backing' | 'batting' | 'binding' | 'borders' | 'cutting' | 'sleeve' | 'top' | 'worksheet';
/** Pieces that may be laid beside those of other parts. Exact inches. */
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
    /** What it is called, where one calculator takes several. */
    title?: Message;
    need: Exact;
    /** The cloth's usable width. Default: the result's. */
    width?: Exact;
    /** The same as sold, before a wash. Default: the result's. */
    sold?: Exact | undefined;
    /** What is cut from it. */
    cuts: Cut[];
    /** What other parts' pieces may be laid beside. Default: the cuts; none where they lie as the result says. */
    pieces?: LooseCut[];
    /** Bought by the piece in place of cloth. */
    item?: Purchase;
    cost?: Money | undefined;
}
/** A calculator: its inputs, what it reckons of them, and what is shown of that. It knows no page and no words. */
export interface Calculator<A extends Answer = Answer> {
    /** Its words go by this name, and so does its element. */
    name: CalculatorName;
    fields: Fields;
    reckon(input: Input | null): Reckoning<A>;
    draw(answer: A): Picture[];
    /** Tables under the drawing; `letters` are those of the fabrics that somebody named for it. */
    lists?(answer: A, letters?: string[]): Listing[];
    /** What stands in large type, in place of what to buy: its lead, and itself. */
    headline?(answer: A): {
        lead: Message;
        large: Message;
    };
    /** Ways that take less, where the shop's stock does not do. */
    instead?(answer: A): {
        way: Message;
        buy: Purchase;
    }[];
    /** What it takes from which fabric, for a shopping list. Default: all of its cloth from one. */
    takes?(answer: A, letters: string[]): Take[];
    /** In a worksheet it gives the quilt this size, for all that come after it. */
    finishes?(answer: A): {
        width: Exact;
        length: Exact;
    };
    /** Inputs that mean something else here than on the worksheet, so that they do not flow in. */
    own?: string[];
    /** Whether it is bought by the piece as it stands, so that its cloth is added to no other's. Default: it is not. */
    byPiece?(input: Input): boolean;
}
