import type { Ledger } from '../../ledger/ledger.js';
import type { Quantity } from '../../ledger/quantity.js';
import type { Size } from '../../ledger/quilt.js';
import { type battingFields, type BattingRow } from './shape.js';
export type BattingLedger = Ledger<typeof battingFields, BattingRow>;
/** The finished size of the quilt: the given one, or the one for a bed. */
export declare const quiltOrBed: (ledger: BattingLedger) => Size<Quantity>;
