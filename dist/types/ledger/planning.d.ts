import { type Message } from '../measure/message.js';
import type { NoPlan } from '../planner/grid.js';
import type { Cloth, CuttingPlan, CutPiece } from '../planner/plan.js';
/** Plans pieces on cloth. One that plans without holding up the page gives how much is done, from 0 to 1, until it is. */
export type Planner = (pieces: CutPiece[], cloth: Cloth) => CuttingPlan | NoPlan | number;
export interface PlanningSayings {
    /** The layout is not ready yet; so much of it is, from 0 to 1. */
    planning: {
        done: number;
    };
    /** A plan that cannot be cut as it says, which nobody may see. */
    unsound: undefined;
}
export declare const sayOfPlan: <Code extends "planning" | "unsound">(code: Code, ...[values]: PlanningSayings[Code] extends undefined ? [] : [values: PlanningSayings[Code]]) => Message<Code>;
/** Whether this is said of a layout that is not ready yet. */
export declare const isPlanning: ({ code }: Pick<Message, "code">) => boolean;
