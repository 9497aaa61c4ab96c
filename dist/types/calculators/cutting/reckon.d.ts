import { type Reckoning } from '../../ledger/ledger.js';
import type { Planner } from '../../ledger/planning.js';
import { type CuttingAnswer, type CuttingInput } from './shape.js';
/**
 * Plans a cut list: for each fabric the strips to cut, what comes from each, and the cloth or sheets to buy. Cuts run edge
 * to edge; every plan is checked before it is given back.
 */
export declare const reckon: (given?: CuttingInput | null, plan?: Planner) => Reckoning<CuttingAnswer>;
