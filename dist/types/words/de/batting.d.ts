import type { battingFields, BattingRow, BattingSayings } from '../../calculators/batting/shape.js';
import type { CommonLabel } from '../common.js';
import type { CalculatorWords } from '../vocabulary.js';
/** The batting's words in German. */
export declare const batting: CalculatorWords<typeof battingFields, BattingRow, BattingSayings, CommonLabel>;
