import { type Message } from '../measure/message.js';
import type { NoPlan } from '../planner/grid.js';
import type { Cloth, CuttingPlan, CutPiece } from '../planner/plan.js';
/** Plans pieces on cloth. A planner in the background gives its progress, from 0 to 1, until the plan is ready. */
export type Planner = (pieces: CutPiece[], cloth: Cloth) => CuttingPlan | NoPlan | number;
export interface PlanningSayings {
    /** The layout is not ready yet. `done` goes from 0 to 1. */
    planning: {
        done: number;
    };
    /** The plan cannot be cut as it says, so nobody may see it. */
    unsound: undefined;
}
export declare const sayOfPlan: <Code extends "planning" | "unsound">(code: Code, ...[values]: PlanningSayings[Code] extends undefined ? [] : [values: PlanningSayings[Code]]) => Message<Code>;
/** Whether a message says that a layout is not ready yet. */
export declare const isPlanning: ({ code }: Pick<Message, "code">) => boolean;
