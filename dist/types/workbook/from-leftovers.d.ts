import type { Planner } from '../ledger/planning.js';
import { type FabricCloth, type LineCloth, type SheetCloth } from './cloths.js';
import { type Left } from './leftovers.js';
import type { Declared, Group } from './parts.js';
import type { FromLeftover, WorksheetLedger } from './shape.js';
/** How all cloth is cut, what is cut from what it leaves, and how to get the rest of that. */
export interface Settled {
    cloths: FabricCloth[];
    fromLeftovers: FromLeftover[];
    /** It is made when somebody asks for it. */
    leftOf: (cloth: LineCloth | SheetCloth) => Left[];
}
/**
 * How all parts are cut. Those that may be cut from what others leave are, if their pieces fit there by a plan: what the backing
 * leaves first, then what any other fabric leaves. One that does not fit is bought, and then the others are tried again, because
 * its cloth is planned with that of its fabric.
 */
export declare const settle: (ledger: WorksheetLedger, declared: Declared[], groups: Group[], plan: Planner) => Settled;
