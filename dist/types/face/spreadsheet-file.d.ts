import type { Answer } from '../ledger/answer.js';
import type { Fields } from '../ledger/field.js';
import type { SheetCell } from '../words/sheet-rows.js';
import type { Good } from './outcome.js';
/** A file of these cells, in Office Open XML. */
export declare const fileOf: (cells: SheetCell[][]) => Promise<Blob>;
/** The working, with its formulas, and the lists of a page as a spreadsheet file. */
export declare const spreadsheetFile: ({ reckoning, t }: Pick<Good<Answer>, "reckoning" | "t">, fields: Fields, lists?: (string | number)[][]) => Promise<Blob>;
