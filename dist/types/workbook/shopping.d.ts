import type { Listing } from '../ledger/listing.js';
import { Purchase, type Money } from '../ledger/purchase.js';
import type { Exact } from '../measure/exact.js';
import type { Message } from '../measure/message.js';
import type { OwnCloth, WorksheetAnswer } from './shape.js';
/** One line of the shopping list: cloth by length, or something bought by the piece. */
export interface ListLine {
    letter: string;
    name: string;
    /** What it is for. */
    uses: Message;
    /** Undefined for what is bought by the piece. */
    need?: Exact;
    /** Undefined where only its words are known. */
    buy: Purchase | undefined;
    text: Message;
    price?: Money | undefined;
    cost?: Money | undefined;
    bolts?: number | undefined;
    width?: Exact | undefined;
    /** What the reader has of it, if she is asked. */
    own?: OwnCloth | undefined;
    /** Nothing is bought for it: it is cut from what others leave. */
    isFree?: true;
}
/** By letter. What has none comes last. */
export declare const byLetter: ({ letter: a }: {
    letter: string;
}, { letter: b }: {
    letter: string;
}) => number;
/** The lines of the list, sorted by letter. Those without a letter come last. */
export declare const listLines: ({ fabrics, items, fromLeftovers, }: Pick<WorksheetAnswer, "fabrics" | "items" | "fromLeftovers">) => ListLine[];
/** The name of a fabric in the list: `A · Sand`. */
export declare const namedOf: ({ letter, name }: {
    letter: string;
    name: string;
}) => string;
/** The shopping list as it is shown. */
export declare const shopping: (answer: WorksheetAnswer) => Listing;
/** How many blocks the reader's own cloth makes. */
export declare const makesList: ({ makes }: Pick<WorksheetAnswer, "makes">) => Listing[];
/** The fabric key: every fabric with a letter, and everything that is bought of it. */
export declare const fabricKey: ({ fabrics, items, }: Pick<WorksheetAnswer, "fabrics" | "items">) => {
    letter: string;
    name: string;
    amounts: Message[];
}[];
/** What to show in large type: the total, or the number of things to buy. */
export declare const headline: ({ total, soFar, fabrics, items, kits, }: WorksheetAnswer) => {
    lead: Message;
    large: Message;
};
