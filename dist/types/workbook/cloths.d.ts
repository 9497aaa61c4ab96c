import type { Planner } from '../ledger/planning.js';
import { type LeftToBuy } from './own-length.js';
import type { Stock } from './own-cloth.js';
import { type SheetsToBuy } from './own-sheets.js';
import { type Group } from './parts.js';
import { type PlannedPool, type Pool } from './pool.js';
import type { WorksheetLedger } from './shape.js';
import { type Length, type Together } from './together.js';
/** Parts that are cut from cloth of one width, and how. */
export interface LineCloth extends Group {
    joint: Together;
    /** What is left to buy, if own cloth is cut first. */
    own: LeftToBuy | undefined;
}
/** The lengths to buy. */
export declare const lengthsToBuy: ({ own, joint }: LineCloth) => Length[];
/** Parts that are cut from the same sheets, and how. */
export interface SheetCloth extends Group {
    pool: Pool;
    joint: PlannedPool;
    own: SheetsToBuy | undefined;
}
/** How the sheets are cut. */
export declare const sheetsToCut: ({ own, joint }: SheetCloth) => PlannedPool;
/** How all parts of a fabric are cut. Nothing is written about it yet. */
export interface FabricCloth {
    group: Group;
    lines: LineCloth[];
    pools: SheetCloth[];
}
/** Plans all parts of a fabric. What is at hand of it is used first. */
export declare const clothOf: (ledger: WorksheetLedger, group: Group, stock: Stock | undefined, plan: Planner) => FabricCloth;
