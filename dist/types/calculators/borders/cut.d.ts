import type { Cloth } from '../../ledger/cloth.js';
import type { OwnCloth } from '../../ledger/widths.js';
import { type BordersLedger, type Corners, type CutBorder } from './shape.js';
import { type Lot, type WorkedPlan } from './strips.js';
import type { GrowingTop, Widths } from './top.js';
/** A border with its cloth. If there are several borders, its cloth has its own row. */
export interface SewnBorder {
    made: CutBorder;
    lots: Lot[];
    plan: WorkedPlan;
    /** The rows that its cloth is from. */
    from: string[];
}
/** Adds a border to the top and plans its strips. Undefined if there is nothing to add. */
export declare const sewBorder: (ledger: BordersLedger, top: GrowingTop, { number, corners, widths }: {
    number: number;
    corners: Corners;
    widths: Widths;
}, cloth: Cloth, own: OwnCloth) => SewnBorder | undefined;
