import { type FabricCloth, type SheetCloth } from './cloths.js';
import { type Left } from './leftovers.js';
import type { Declared } from './parts.js';
import type { WorksheetLedger } from './shape.js';
import type { CountedItem } from './sums.js';
/** The lines of a fabric that is bought in sheets: one for all parts that are cut from the same ones. */
export declare const sheetLinesOf: (ledger: WorksheetLedger, declared: Declared[], { group, pools }: FabricCloth, leftOf: (cloth: SheetCloth) => Left[]) => CountedItem[];
