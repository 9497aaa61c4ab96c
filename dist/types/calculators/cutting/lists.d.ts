import type { Listing } from '../../ledger/listing.js';
import { type FabricPlan } from './plan-shape.js';
/** The strips to cut of each fabric. */
export declare const lists: ({ fabrics }: {
    fabrics: FabricPlan[];
}) => Listing[];
