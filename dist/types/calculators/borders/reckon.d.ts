import { type Reckoning } from '../../ledger/ledger.js';
import { type BordersAnswer, type BordersInput } from './shape.js';
/**
 * Borders round a top: what to cut for each, from how many strips, the cloth for all of them, and the finished size. A
 * length typed over a reckoned one changes all that follows. Impossible inputs give `errors`, never an exception.
 */
export declare const reckon: (input?: BordersInput | null) => Reckoning<BordersAnswer>;
