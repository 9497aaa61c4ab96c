import type { Planner } from '../ledger/planning.js';
import { type Stock } from './own-cloth.js';
import { type PlannedPool, type Pool } from './pool.js';
import type { PlannedTogether } from './shape.js';
/** What is left to buy of sheets, if own cloth is used first. */
export interface SheetsToBuy {
    /** How to cut the sheets, own ones of the same size among them. */
    planned: PlannedPool;
    buy: number;
    /** How to cut the reader's other cloth. */
    own: PlannedTogether[];
}
/**
 * The sheets to buy if own cloth is used first: own sheets of the same size as they are, and other cloth for the pieces that can be
 * cut from it, if that leaves fewer sheets to buy.
 */
export declare const sheetsLeftToBuy: (pool: Pool, planned: PlannedPool, stock: Stock, plan: Planner) => SheetsToBuy;
