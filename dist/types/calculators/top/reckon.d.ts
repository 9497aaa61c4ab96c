import { type Reckoning } from '../../ledger/ledger.js';
import type { Planner } from '../../ledger/planning.js';
import { type TopAnswer, type TopInput } from './shape.js';
/**
 * A top's size from its blocks, with every sashing piece, cornerstone and setting triangle. On point, sashing runs round
 * every block, with cornerstones. `buy` is the cloth for sashing, cornerstones and setting triangles from one cloth;
 * the blocks' own patches are a cut list's matter. While a planner is at work the cloth is what strips of each kind take.
 */
export declare const reckon: (input?: TopInput | null, plan?: Planner) => Reckoning<TopAnswer>;
