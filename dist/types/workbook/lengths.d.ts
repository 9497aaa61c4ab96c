import { Purchase } from '../ledger/purchase.js';
import type { Message } from '../measure/message.js';
import type { WorksheetLedger } from './shape.js';
import type { Length } from './together.js';
/** A length, and what is bought for it. */
export interface BoughtLength extends Length {
    buy: Purchase;
}
/** What is bought of one cloth, in how many lengths. */
export interface BoughtLengths {
    buy: Purchase;
    lengths: BoughtLength[];
}
/** The lengths to buy of one cloth, rounded up; each warns of a small spare. */
export declare const buyLengths: (ledger: WorksheetLedger, lengths: Length[], cloth: Message) => BoughtLengths;
/** Says what each of two lengths is for, and what one length would be. */
export declare const noteLengths: (ledger: WorksheetLedger, cloth: Message, lengths: BoughtLengths["lengths"]) => void;
