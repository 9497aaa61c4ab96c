import { type Listing } from '../../ledger/listing.js';
import { type BordersAnswer } from './shape.js';
/** Every plan for each border, and how many strips to cut for it. */
export declare const lists: ({ used: { borders } }: BordersAnswer) => Listing[];
