import type { Unwritten } from './answer.js';
import type { CuttingBook, FabricPlan } from './cutting.js';
/** Says how to fold cloth and strips, so that a cut across them fits the ruler and the mat. */
export declare const noteFolds: (book: CuttingBook, fabrics: Unwritten<FabricPlan>[]) => void;
