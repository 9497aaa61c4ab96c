import { sayings } from '../measure/message.js';

/** What a spreadsheet file says beside what the page says. It is loaded with what writes the file. */
export interface SpreadsheetSayings {
  unitColumnHead: undefined;
  onPageHead: undefined;
  /** A row holds a list: which entry of it this is. */
  numberedRow: { label: string; number: number };
  cutCountHead: undefined;
  cutWidthHead: undefined;
  cutLengthHead: undefined;
  /** Under the rows: what a change in them changes, and what it does not. */
  formulasFollow: undefined;
  /** Of a number that was given and that no formula goes by. */
  notFollowed: undefined;
  /** In place of why a number was found, once it does not do any more. */
  tooLittleNow: undefined;
  /** Formulas in words. */
  toNextStep: { formula: string; step: string };
  toCoin: { formula: string };
}

export const sayInSpreadsheet = sayings<SpreadsheetSayings>();
