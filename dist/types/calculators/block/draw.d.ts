import { type Picture } from '../../ledger/picture.js';
import { type BlockAnswer } from './shape.js';
/** The block, and the cloth of each fabric with what is cut from it. */
export declare const draw: (answer: BlockAnswer) => Picture[];
