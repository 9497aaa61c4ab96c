import type { Cloth } from '../../ledger/cloth.js';
import { type Planner } from '../../ledger/planning.js';
import { Cut } from '../../ledger/purchase.js';
import type { Quantity } from '../../ledger/quantity.js';
import { type CutStrip } from '../../ledger/strips.js';
import { type Exact } from '../../measure/exact.js';
import { type CuttingPlan } from '../../planner/plan.js';
import { type topFields, type TopLedger } from './shape.js';
/** Pieces, with the cloth and the strips for them. */
export interface Planned {
    cuts: Cut[];
    fabric: Quantity;
    strips: CutStrip[];
    /** Undefined until it is ready, or if several plans follow each other. */
    plan?: CuttingPlan;
}
/** Both ways to cut pieces: as they are, and with long ones joined from strips across the cloth. */
interface Ways {
    whole: Planned;
    joined: Planned | undefined;
}
/** The input that causes pieces that cannot be cut. */
type Part = keyof typeof topFields;
/** The plans for the pieces of a top. Until a plan is ready, the cloth is that of separate strips for each kind of piece. */
export declare class Plans {
    readonly ledger: TopLedger;
    readonly planner: Planner;
    readonly cloth: Cloth;
    /** Whether a plan is still being made. */
    areUnfinished: boolean;
    constructor(ledger: TopLedger, planner: Planner, cloth: Cloth);
    /** Pieces as they are cut from strips of cloth. */
    of(cuts: Cut[], strips: CutStrip[]): Planned;
    /** How to cut these from cloth of this width. If that is not possible, the error is about `part`. */
    plan(cuts: Cut[], part: Part, width: Exact): Planned;
    private planned;
    ways(cuts: Cut[], part: Part, width: Exact): Ways;
    /** Shows both ways to cut the sashing, if there are two, and what a slightly shorter strip would save. */
    sayJoins(sashes: Cut[], { whole, joined }: Ways, width: Exact): void;
}
/** The plan that takes less, or the first if both take the same. */
export declare const lessOf: (first: Planned, second: Planned | undefined) => Planned;
export {};
