import type { topFields, TopRow, TopSayings } from '../../calculators/top/shape.js';
import type { CommonLabel } from '../common.js';
import type { CalculatorWords } from '../vocabulary.js';
/** The quilt top's words in German. */
export declare const top: CalculatorWords<typeof topFields, TopRow, TopSayings, CommonLabel>;
