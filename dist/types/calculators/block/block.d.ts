import type { Calculator } from '../calculator.js';
import { type BlockAnswer } from './shape.js';
/** A block of the quilt, from its chart. */
export declare const block: Calculator<BlockAnswer>;
