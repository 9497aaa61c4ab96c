import type { PlannedSayings, SheetSayings } from '../../calculators/cutting/plan-shape.js';
import type { SheetKind } from '../../trade/cloths.js';
import { type Forms, type Hint } from '../teller.js';
import type { Sentences } from '../vocabulary.js';
/** What each kind of sheet is called. */
export declare const SHEETS: Record<SheetKind, Forms>;
/** How to write what a list is cut from. */
export declare const SHEET_HINT: Hint;
/** What is said of a list that is planned, in German. */
export declare const planned: Sentences<PlannedSayings>;
/** What is said only if it is cut from sheets, in German. */
export declare const onSheets: Sentences<SheetSayings>;
