import { type Listing } from '../../ledger/listing.js';
import { type BattingAnswer } from './shape.js';
/** Every package, and every way to cut it from a roll. */
export declare const lists: ({ packages, rolls }: BattingAnswer) => Listing[];
