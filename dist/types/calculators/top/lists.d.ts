import { type Listing } from '../../ledger/listing.js';
import { type TopAnswer } from './shape.js';
/** The strips to cut, all from one cloth or each part from its own; who names one fabric, or several, has decided. */
export declare const lists: ({ parts, strips }: TopAnswer, letters?: string[]) => Listing[];
