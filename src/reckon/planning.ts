import type { NoPlan } from '../planner/grid.js';
import type { Cloth, CuttingPlan, CutPiece } from '../planner/plan.js';

/** Plans pieces on cloth. One that plans without holding up the page gives how much is done, from 0 to 1, until it is. */
export type Planner = (pieces: CutPiece[], cloth: Cloth) => CuttingPlan | NoPlan | number;

/** Begins what is said of a layout that is not ready yet. */
export const PLANNING = 'The layout is being planned';
