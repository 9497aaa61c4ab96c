import { type Listing } from '../../ledger/listing.js';
import { type BackingAnswer } from './shape.js';
/** Every layout that is possible. */
export declare const lists: ({ layouts }: BackingAnswer) => Listing[];
