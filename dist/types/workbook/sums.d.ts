import { Message } from '../measure/message.js';
import type { Money } from '../ledger/purchase.js';
import type { WorkbookItem } from './input.js';
import type { CountedLine } from './lines.js';
import type { Declared } from './parts.js';
import type { ShoppingItem, Sums, WorksheetLedger } from './shape.js';
/** Something bought by the piece, its name, and what it costs (undefined without a price). */
export interface CountedItem {
    item: ShoppingItem;
    called: Message;
    paid: Money | undefined;
}
/** What is bought by the piece, and what it costs. */
export declare const countItems: (ledger: WorksheetLedger, items: WorkbookItem[], declared: Declared[]) => CountedItem[];
/** The total, with its rows and a list of what has no price. */
export declare const totals: (ledger: WorksheetLedger, lines: CountedLine[], items: CountedItem[], isUnfinished: boolean) => Sums;
