import type { Answer } from '../ledger/answer.js';
import type { Fields } from '../ledger/field.js';
import type { Reckoning } from '../ledger/ledger.js';
import { type SheetCell } from './sheet-rows.js';
import type { Teller } from './teller.js';
/**
 * The rows of a spreadsheet, with lengths in the reader's units. Each row has its name, its value, its unit, how it was got in words
 * that stay true after a change, and how it was got on the page. Below are the `lists`, or else the cut list.
 */
export declare const spreadsheetOf: ({ rows, own }: Pick<Reckoning<Answer>, "rows" | "own">, fields: Fields, t: Teller, lists?: SheetCell[][]) => SheetCell[][];
