import { Purchase, type Money } from '../ledger/purchase.js';
import { Quantity } from '../ledger/quantity.js';
import type { Message } from '../measure/message.js';
import { type FabricCloth, type LineCloth } from './cloths.js';
import { type Left } from './leftovers.js';
import { type Declared } from './parts.js';
import type { ShoppingLine, WorksheetLedger } from './shape.js';
/** A line of the list, and what it adds to the sums. */
export interface CountedLine {
    line: ShoppingLine;
    /** Its fabric in words: `Fabric A`, or the name of the part if that names no fabric. */
    called: Message;
    /** Undefined if it has no price. */
    paid: Money | undefined;
    /** The same as a formula. */
    costs: Quantity | undefined;
    /** The same for whole bolts, if the shop cuts kits. */
    boltCost: Money | undefined;
}
/** The lines of one fabric: one for each width of cloth that its parts are cut from. */
export declare const linesOf: (ledger: WorksheetLedger, declared: Declared[], { group: { letter }, lines }: FabricCloth, leftOf: (cloth: LineCloth) => Left[]) => CountedLine[];
/** What to buy in words. If own cloth is cut first, it is what is missing. */
export declare const textOfLine: (text: Message, hasOwn: boolean, { amount }: Purchase) => Message;
