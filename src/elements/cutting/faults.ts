import { isEmptyRow, type CutCell, type CutRow } from '../../calculators/cutting/cut-cells.js';
import type { CuttingSayings } from '../../calculators/cutting/shape.js';
import { isMessage } from '../../measure/message.js';
import type { Issue } from '../../ledger/refusal.js';

const is = (code: keyof CuttingSayings, issue: Pick<Issue, 'code'>): boolean => issue.code === code;

/** The line of a row, as a message counts it: empty rows do not count. */
const lineOf = (rows: CutRow[], row: number): number =>
  rows.slice(0, row + 1).filter((one) => !isEmptyRow(one)).length;

/** Whether an issue is about this row. */
export const isAboutRow = ({ values }: Issue, rows: CutRow[], row: number): boolean => {
  const { number }: { number?: unknown } = values;
  return number === lineOf(rows, row);
};

/** The name of the piece that a message is about, also if it is about its squares. */
const nameIn = (message: unknown): unknown => {
  if (!isMessage(message)) return undefined;
  const { name, piece }: { name?: unknown; piece?: unknown } = message.values;
  return name ?? nameIn(piece);
};

/** Whether an issue of the list is about this cell. */
export const isAboutCell = (issue: Issue, rows: CutRow[], row: number, cell: CutCell): boolean => {
  const shown = rows[row];
  if (!shown || isEmptyRow(shown)) return false;
  const { says, piece }: { says?: unknown; piece?: unknown } = issue.values;
  if (is('inLine', issue)) {
    const { column }: { column?: unknown } = isMessage(says) ? says.values : {};
    return column === cell && isAboutRow(issue, rows, row);
  }
  if (is('noPiece', issue)) return cell === 'count';
  return is('ofPiece', issue) && (cell === 'width' || cell === 'length') && nameIn(piece) === shown.piece;
};
