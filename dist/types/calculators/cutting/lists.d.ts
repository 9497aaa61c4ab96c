import type { Listing } from '../../ledger/listing.js';
import { type CuttingAnswer } from './shape.js';
/** The strips to cut of each fabric. */
export declare const lists: ({ fabrics }: CuttingAnswer) => Listing[];
