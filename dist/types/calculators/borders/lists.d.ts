import { type Listing } from '../../ledger/listing.js';
import { type BordersAnswer } from './shape.js';
/** Every plan for each border, with its strips. */
export declare const lists: ({ used: { borders } }: BordersAnswer) => Listing[];
