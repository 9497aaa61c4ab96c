import { type Reckoning } from '../../ledger/ledger.js';
import { type SleeveAnswer, type SleeveInput } from './shape.js';
/** Cloth for the sleeve that a quilt hangs by: a strip across its top edge, hemmed at both ends and sewn to a tube. And for a label. */
export declare const reckon: (input?: SleeveInput | null) => Reckoning<SleeveAnswer>;
