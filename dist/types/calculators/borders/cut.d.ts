import type { Cloth } from '../../ledger/cloth.js';
import type { OwnCloth } from '../../ledger/widths.js';
import { type BordersLedger, type Corners, type CutBorder } from './shape.js';
import { type Lot, type WorkedPlan } from './strips.js';
import type { GrowingTop, Widths } from './top.js';
/** A border that was sewn on, with what it takes; its cloth is a row of its own where there are several. */
export interface SewnBorder {
    made: CutBorder;
    lots: Lot[];
    plan: WorkedPlan;
    /** The rows that its cloth is from. */
    from: string[];
}
/** Sews a border on and plans its strips; undefined where there is nothing to sew on. */
export declare const sewBorder: (ledger: BordersLedger, top: GrowingTop, { number, corners, widths }: {
    number: number;
    corners: Corners;
    widths: Widths;
}, cloth: Cloth, own: OwnCloth) => SewnBorder | undefined;
