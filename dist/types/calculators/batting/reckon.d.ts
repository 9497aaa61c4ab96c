import { type Reckoning } from '../../ledger/ledger.js';
import { type BattingAnswer, type BattingInput } from './shape.js';
/** Batting for a quilt, from a package or from the roll, and the quilt's size where it is for a bed. */
export declare const reckon: (input?: BattingInput | null) => Reckoning<BattingAnswer>;
