import { type Picture, type Shape } from '../../ledger/picture.js';
import type { Chart } from './patch.js';
import { type BlockAnswer } from './shape.js';
/** The same as shapes. Each has room for words. */
export declare const pieceShapes: (chart: Chart) => Shape[];
/** The block, and the cloth of each fabric with what is cut from it. */
export declare const draw: (answer: BlockAnswer) => Picture[];
