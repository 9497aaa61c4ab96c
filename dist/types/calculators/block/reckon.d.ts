import { type Reckoning } from '../../ledger/ledger.js';
import type { Planner } from '../../ledger/planning.js';
import { type BlockAnswer, type BlockInput } from './shape.js';
/**
 * One block of a quilt, as a chart of fabric letters: what to cut for so many of them, and the cloth of each fabric. Every plan is
 * checked before it is given back.
 */
export declare const reckon: (given?: BlockInput | null, plan?: Planner) => Reckoning<BlockAnswer>;
