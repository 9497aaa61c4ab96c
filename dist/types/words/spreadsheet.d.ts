import type { Answer } from '../ledger/answer.js';
import type { Fields } from '../ledger/field.js';
import type { Reckoning } from '../ledger/ledger.js';
import { type SheetCell } from './sheet-rows.js';
import type { Teller } from './teller.js';
/**
 * A reckoning as the rows of a spreadsheet, all lengths in the reader's units: what each row is, its value, its unit, how it
 * was got in words that hold whatever is changed there, and how it was got on the page. Then `lists`, or else what to cut.
 */
export declare const spreadsheetOf: ({ rows, own }: Pick<Reckoning<Answer>, "rows" | "own">, fields: Fields, t: Teller, lists?: SheetCell[][]) => SheetCell[][];
