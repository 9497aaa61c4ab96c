import type { Sheet } from '../calculators/cutting/plan-shape.js';
import { type Planner } from '../ledger/planning.js';
import { type LaidPlan } from '../ledger/strips.js';
import type { Message } from '../measure/message.js';
import { type Joined } from '../planner/canonical.js';
import type { CutPiece, CuttingPlan } from '../planner/plan.js';
import type { WorkbookPart } from './input.js';
import type { SheetsOfPart } from './shape.js';
/** Parts of one fabric that are cut from the same sheets, in the order of their weeks. */
export interface Pool {
    sheet: Sheet;
    oneWay: boolean;
    parts: WorkbookPart[];
}
/** In the order of the weeks. What has none comes last. */
export declare const byWeek: ({ week: a }: {
    week?: number | undefined;
}, { week: b }: {
    week?: number | undefined;
}) => number;
/** The parts that are cut from the same sheets. Those that are cut from cloth by length are left out. */
export declare const poolsOf: (parts: WorkbookPart[]) => Pool[];
/** A piece for the planner, with the name that its part gives it. */
export interface NamedPiece extends CutPiece {
    name: Message;
}
export declare const namedPieces: ({ title, pieces }: WorkbookPart) => NamedPiece[];
/** What each piece of a joint list is called: all names that the parts give it. */
export declare const namesOf: ({ from }: Joined<NamedPiece>) => Message[];
/** What the parts of a pool take. */
export interface PlannedPool {
    count: number;
    /** How many sheets each part takes by itself. */
    alone: number[];
    weeks: SheetsOfPart[] | undefined;
    laid: LaidPlan | undefined;
    /** The plan of all parts, and the numbers that its sheets have, if they are shared out. */
    joint?: {
        plan: CuttingPlan;
        numbers: Map<number, number> | undefined;
    };
    /** A plan that may save sheets is not ready yet. */
    isPlanning?: boolean;
}
/** A joint plan, shared out to the parts. `all` has the pieces that they want. */
export declare const sharedPool: (pool: Pool, alone: number[], planned: CuttingPlan, all: Joined<NamedPiece>) => PlannedPool;
/**
 * The sheets for all parts of a pool: as one list of all their pieces takes, and never more than the parts take one after the other.
 * The plan is then shared out to the parts, so that each of them cuts from sheets that are open already, as far as they have its
 * pieces.
 */
export declare const planPool: (pool: Pool, plan: Planner) => PlannedPool;
