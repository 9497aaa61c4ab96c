import { type Listing } from '../../ledger/listing.js';
import { type TopAnswer } from './shape.js';
/** The strips to cut: all from one cloth, and each part from its own. If the author named fabrics, only one of these is right. */
export declare const lists: ({ parts, strips }: TopAnswer, letters?: string[]) => Listing[];
