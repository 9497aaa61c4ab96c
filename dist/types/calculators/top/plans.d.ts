import type { Cloth } from '../../ledger/cloth.js';
import { type Planner } from '../../ledger/planning.js';
import { Cut } from '../../ledger/purchase.js';
import type { Quantity } from '../../ledger/quantity.js';
import { type CutStrip } from '../../ledger/strips.js';
import { type Exact } from '../../measure/exact.js';
import { type topFields, type TopLedger } from './shape.js';
/** Pieces, the cloth they take and the strips they are cut from. */
export interface Planned {
    cuts: Cut[];
    fabric: Quantity;
    strips: CutStrip[];
}
/** Both ways to cut pieces: as they are, and with those that are longer than the cloth is wide joined from strips. */
interface Ways {
    whole: Planned;
    joined: Planned | undefined;
}
/** The input to blame for pieces that cannot be cut. */
type Part = keyof typeof topFields;
/** The plans for a top's pieces. While a planner is at work, its cloth is what strips of each kind take. */
export declare class Plans {
    readonly ledger: TopLedger;
    readonly planner: Planner;
    readonly cloth: Cloth;
    /** Whether a plan is still being made. */
    areUnfinished: boolean;
    constructor(ledger: TopLedger, planner: Planner, cloth: Cloth);
    /** Pieces as they are cut from strips of cloth. */
    of(cuts: Cut[], strips: CutStrip[]): Planned;
    /** How to cut these from cloth of this width; of `part` it is said where that is not possible. */
    plan(cuts: Cut[], part: Part, width: Exact): Planned;
    private planned;
    ways(cuts: Cut[], part: Part, width: Exact): Ways;
    /** Shows both ways to cut the sashing, where there are two, and what a strip that is a little shorter would save. */
    sayJoins(sashes: Cut[], { whole, joined }: Ways, width: Exact): void;
}
/** The one that takes less; the first where both take the same. */
export declare const lessOf: (first: Planned, second: Planned | undefined) => Planned;
export {};
