import type { Planner } from '../ledger/planning.js';
import type { WorkbookMaker } from './input.js';
import type { Declared } from './parts.js';
import type { BlocksFromOwn } from './shape.js';
/** How many blocks of each kind a reader's own cloth makes, if all of it is for them, and which fabric runs out. */
export declare const blocksFromOwn: (makers: WorkbookMaker[], declared: Declared[], plan: Planner) => BlocksFromOwn[];
