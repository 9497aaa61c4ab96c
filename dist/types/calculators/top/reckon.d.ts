import { type Reckoning } from '../../ledger/ledger.js';
import type { Planner } from '../../ledger/planning.js';
import { type TopAnswer, type TopInput } from './shape.js';
/**
 * A top's size from its blocks, with every sashing piece, cornerstone and setting triangle. On point, sashing runs round
 * every block, with cornerstones. `buy` is the cloth for sashing, cornerstones and setting triangles from one cloth. The patches
 * of the blocks are not in it: they belong into a cut list. Until the plan is ready, the cloth is that of separate strips for each
 * kind of piece.
 */
export declare const reckon: (input?: TopInput | null, plan?: Planner) => Reckoning<TopAnswer>;
