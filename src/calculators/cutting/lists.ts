import type { Listing } from '../../ledger/listing.js';
import { stripList } from '../../ledger/strip-list.js';
import { say, type FabricPlan } from './plan-shape.js';

/** The strips to cut of each fabric. */
export const lists = ({ fabrics }: { fabrics: FabricPlan[] }): Listing[] => [
  stripList(
    fabrics.map(({ fabric, strips }) => ({ of: fabric || say('noFabric'), strips })),
    say('fabricHead'),
  ),
];
