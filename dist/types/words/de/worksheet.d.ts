import type { WorksheetSayings } from '../../workbook/sayings.js';
import type { worksheetFields } from '../../workbook/shape.js';
import type { CommonLabel } from '../common.js';
import type { CalculatorWords } from '../vocabulary.js';
/** The worksheet's words in German. */
export declare const worksheet: CalculatorWords<typeof worksheetFields, never, WorksheetSayings, CommonLabel>;
