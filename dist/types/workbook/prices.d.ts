import { type Field, type Label } from '../ledger/field.js';
import type { Exact } from '../measure/exact.js';
import type { Message } from '../measure/message.js';
import type { Price, WorkbookFabric, WorkbookItem, WorkbookPart } from './input.js';
import type { WorksheetLedger } from './shape.js';
/** What was written; what cannot be read is named in a note, as of this, and left out. */
export declare const tried: <T>(ledger: WorksheetLedger, of: Message, read: () => T) => T | undefined;
/** Reads what was written in a field. */
export declare const readWritten: <T>(ledger: WorksheetLedger, field: Field<T>, written: unknown, what: Label) => T | undefined;
/** The price, if there is one and it can be read. */
export declare const priceOf: (ledger: WorksheetLedger, price: Price | undefined, what: Message) => Exact | undefined;
/** All on the list that may have a price. */
interface Priced {
    fabrics: Pick<WorkbookFabric, 'price'>[];
    parts: Pick<WorkbookPart, 'price'>[];
    items: Pick<WorkbookItem, 'cost'>[];
}
/** If no currency is given, takes the one that any price names, for all of them. */
export declare const adoptCurrency: (ledger: WorksheetLedger, { fabrics, parts, items }: Priced) => void;
export {};
