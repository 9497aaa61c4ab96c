import { Message } from '../measure/message.js';
import type { Money } from '../ledger/purchase.js';
import type { WorkbookItem } from './input.js';
import type { CountedLine } from './lines.js';
import type { Declared } from './parts.js';
import type { ShoppingItem, Sums, WorksheetLedger } from './shape.js';
/** Something bought by the piece, what it is called, and what is to pay for it; undefined where it has no price. */
export interface CountedItem {
    item: ShoppingItem;
    called: Message;
    paid: Money | undefined;
}
/** What is bought by the piece, and what it costs. */
export declare const countItems: (ledger: WorksheetLedger, items: WorkbookItem[], declared: Declared[]) => CountedItem[];
/** What everything comes to, with its rows and what has no price. */
export declare const totals: (ledger: WorksheetLedger, lines: CountedLine[], items: CountedItem[], isUnfinished: boolean) => Sums;
