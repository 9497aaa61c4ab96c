import type { FabricPlan } from './plan-shape.js';
import { type CuttingLedger } from './shape.js';
/** Says how to fold cloth and strips, so that a cut across them fits the ruler and the mat. */
export declare const noteFolds: (ledger: CuttingLedger, fabrics: FabricPlan[]) => void;
