import { type Reckoning } from '../../ledger/ledger.js';
import { type BattingAnswer, type BattingInput } from './shape.js';
/** Batting for a quilt, from a package or from the roll. Also the size of a quilt for a bed. */
export declare const reckon: (input?: BattingInput | null) => Reckoning<BattingAnswer>;
