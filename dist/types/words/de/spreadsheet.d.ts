import type { SpreadsheetSayings } from '../spreadsheet-sayings.js';
import type { Sentences } from '../vocabulary.js';
/** The words of a spreadsheet file in German. */
export declare const spreadsheet: Sentences<SpreadsheetSayings>;
