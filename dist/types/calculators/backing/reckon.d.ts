import { type Reckoning } from '../../ledger/ledger.js';
import { type BackingAnswer, type BackingInput } from './shape.js';
/**
 * Cloth for a quilt's back: every layout of panels, with its seams and cloth; the least cloth first, then the fewest
 * seams. A layout with a pieced strip comes after the whole panels unless `piecedStrip` is set.
 */
export declare const reckon: (input?: BackingInput | null) => Reckoning<BackingAnswer>;
