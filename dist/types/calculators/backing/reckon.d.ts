import { type Reckoning } from '../../ledger/ledger.js';
import { type BackingAnswer, type BackingInput } from './shape.js';
/**
 * Cloth for a quilt's back: every layout of panels, with its seams and cloth. The one with the least cloth comes first, then the one
 * with the fewest seams. Layouts with a pieced strip come last, unless `piecedStrip` is set.
 */
export declare const reckon: (input?: BackingInput | null) => Reckoning<BackingAnswer>;
