import type { blockFields, BlockRow, BlockSayings } from '../../calculators/block/shape.js';
import type { CommonLabel } from '../common.js';
import type { CalculatorWords } from '../vocabulary.js';
/** The block's words in German. */
export declare const block: CalculatorWords<typeof blockFields, BlockRow, BlockSayings, CommonLabel>;
