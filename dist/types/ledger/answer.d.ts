import type { Exact } from '../measure/exact.js';
import type { Message } from '../measure/message.js';
import type { Cloth } from './cloth.js';
import type { Cut, Purchase } from './purchase.js';
/** What every calculator gives. */
export interface Answer {
    /** What to buy, rounded up to the shop's step. */
    buy: Purchase;
    /** Exact inches needed before rounding. */
    fabric: Exact;
    /** Exact inches bought beyond the need. */
    spare: Exact;
    /** One sentence under the answer. */
    summary: Message;
    /** What to cut. Empty if nothing is cut. */
    cuts: Cut[];
    /** Further values for the drawing and the worksheet. Not part of the public result. */
    used: {
        cloth?: Cloth;
    };
}
