import type { Ledger } from '../../ledger/ledger.js';
import { type Quantity } from '../../ledger/quantity.js';
import { type Size } from '../../ledger/quilt.js';
import { type Bed } from '../../trade/beds.js';
import { type battingFields, type BattingRow } from './shape.js';
export type BattingLedger = Ledger<typeof battingFields, BattingRow>;
/** Whether the bed is one for a baby. */
export declare const isCrib: (bed: "none" | Bed) => boolean;
/** The finished size of the quilt: the given one, or the one for a bed. */
export declare const quiltOrBed: (ledger: BattingLedger) => Size<Quantity>;
