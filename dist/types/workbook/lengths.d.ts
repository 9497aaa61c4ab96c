import { Purchase } from '../ledger/purchase.js';
import type { Message } from '../measure/message.js';
import type { WorksheetLedger } from './shape.js';
import type { Length } from './together.js';
/** A length, and what is bought for it. */
export interface BoughtLength extends Length {
    buy: Purchase;
}
/** What to buy of one cloth, and in how many lengths. */
export interface BoughtLengths {
    buy: Purchase;
    lengths: BoughtLength[];
}
/** The lengths to buy of one cloth, rounded up. Each warns if little is left over. */
export declare const buyLengths: (ledger: WorksheetLedger, lengths: Length[], cloth: Message) => BoughtLengths;
/** Says what each of the two lengths is for, and how long one length for all would be. */
export declare const noteLengths: (ledger: WorksheetLedger, cloth: Message, lengths: BoughtLengths["lengths"]) => void;
