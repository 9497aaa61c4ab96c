import type { Answer } from '../ledger/answer.js';
import type { ListCell } from '../ledger/listing.js';
import type { Teller } from '../words/teller.js';
import type { WorkingRow } from '../words/told.js';
/** Rows of cells, the heads first. Numbers stay numbers, so that a spreadsheet can add them up. */
export type Cells = (string | number)[][];
/** A cell of a list in a spreadsheet: a length in the reader's units, money and what is bought as numbers. */
export declare const spreadsheetCell: (cell: ListCell, t: Teller) => string | number;
/** The working and the cut list as plain cells. Lengths come as shown and as decimal inches. */
export declare const cellsOf: (working: WorkingRow[], { cuts }: Answer, t: Teller) => Cells;
/**
 * RFC 4180, with a byte-order mark so that every program reads UTF-8. If the language writes a decimal comma, its spreadsheets
 * expect semicolons between cells, and would read a number with a point as a date or a word.
 */
export declare const csvOf: (cells: Cells, comma?: boolean) => string;
/** Tabs between cells: pastes into the columns of any spreadsheet. */
export declare const tabbedOf: (cells: Cells, comma?: boolean) => string;
/** Offers a file to the reader. */
export declare const download: (name: string, content: BlobPart, about?: BlobPropertyBag) => void;
