import type { bordersFields, BordersRow, BordersSayings } from '../../calculators/borders/shape.js';
import type { CommonLabel } from '../common.js';
import type { CalculatorWords } from '../vocabulary.js';
/** The borders' words in German. */
export declare const borders: CalculatorWords<typeof bordersFields, BordersRow, BordersSayings, CommonLabel>;
