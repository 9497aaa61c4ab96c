import type { cuttingFields, CuttingRow, CuttingSayings } from '../../calculators/cutting/shape.js';
import type { CommonLabel } from '../common.js';
import type { CalculatorWords } from '../vocabulary.js';
/** The cutting plan's words in German. */
export declare const cutting: CalculatorWords<typeof cuttingFields, CuttingRow, CuttingSayings, CommonLabel>;
