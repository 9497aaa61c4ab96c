import type { backingFields, BackingRow, BackingSayings } from '../../calculators/backing/shape.js';
import type { CommonLabel } from '../common.js';
import type { CalculatorWords } from '../vocabulary.js';
/** The backing's words in German. */
export declare const backing: CalculatorWords<typeof backingFields, BackingRow, BackingSayings, CommonLabel>;
