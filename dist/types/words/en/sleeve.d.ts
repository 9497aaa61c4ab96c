import type { sleeveFields, SleeveRow, SleeveSayings } from '../../calculators/sleeve/shape.js';
import type { CommonLabel } from '../common.js';
import type { CalculatorWords } from '../vocabulary.js';
/** The hanging sleeve's words in English. */
export declare const sleeve: CalculatorWords<typeof sleeveFields, SleeveRow, SleeveSayings, CommonLabel>;
