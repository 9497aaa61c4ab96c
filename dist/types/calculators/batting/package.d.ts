import { Quantity } from '../../ledger/quantity.js';
import { type Size } from '../../ledger/quilt.js';
import type { BattingLedger } from './bed.js';
import type { RankedPackage } from './rank.js';
import { type BattingAnswer } from './shape.js';
/** What is bought, and how to cut it. */
export type Bought = Pick<BattingAnswer, 'buy' | 'fabric' | 'spare' | 'summary' | 'cuts'>;
/** One package: what it leaves over in both directions, and its price if the list gives one. */
export declare const buyPackage: (ledger: BattingLedger, pack: RankedPackage, need: Size<Quantity>) => Bought;
