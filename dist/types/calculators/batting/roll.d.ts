import { type Quantity } from '../../ledger/quantity.js';
import { type Size } from '../../ledger/quilt.js';
import type { RollPlan } from '../../planner/rolls.js';
import type { BattingLedger } from './bed.js';
import type { Bought } from './package.js';
/** Lengths from a roll, joined edge to edge if one is not wide enough. */
export declare const buyFromRoll: (ledger: BattingLedger, plan: RollPlan, need: Size<Quantity>) => Bought;
