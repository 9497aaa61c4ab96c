import { type Reckoning } from '../../ledger/ledger.js';
import { type BindingAnswer, type BindingInput } from './shape.js';
/**
 * Cloth for a quilt's binding: strips across the cloth, joined end to end, or squares for continuous bias. It also gives the same
 * binding from fat quarters.
 */
export declare const reckon: (input?: BindingInput | null) => Reckoning<BindingAnswer>;
