import writeExcelFile, { type Feature, type SheetData } from 'write-excel-file/universal';
import type { Answer } from '../ledger/answer.js';
import type { Fields } from '../ledger/field.js';
import type { SheetCell } from '../words/sheet-rows.js';
import { spreadsheetOf } from '../words/spreadsheet.js';
import type { Good } from './outcome.js';

/** How wide the columns are, in digits: what a row is, its value, its unit, how it was got. */
const WIDTHS = [34, 14, 10, 60, 60];

const addressOf = (row: number, column: number): string =>
  `${String.fromCharCode('A'.charCodeAt(0) + column)}${row + 1}`;

/** Signs that mean something in the file's own language. */
const ESCAPED: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;' };
const escaped = (text: string): string => text.replace(/[&<>]/g, (sign) => ESCAPED[sign] ?? sign);

/**
 * Adds the value of each formula. A mail program’s preview works out nothing, and neither does a spreadsheet program that does not
 * trust a file from the web yet.
 */
const withValues = (cells: SheetCell[][]): Feature<Blob> => {
  const values = new Map<string, number | string>();
  cells.forEach((row, at) =>
    row.forEach((cell, column) => {
      if (typeof cell === 'object' && cell.formula) values.set(addressOf(at, column), cell.value);
    }),
  );
  const transform = (xml: string): string =>
    xml.replace(/(<c r="([A-Z]+\d+)"[^>]*)>(<f>.*?<\/f>)<\/c>/gs, (whole, cell, address, formula) => {
      const value = values.get(String(address));
      if (value === undefined) return whole;
      const type = typeof value === 'string' ? ' t="str"' : '';
      return `${String(cell)}${type}>${String(formula)}<v>${escaped(`${value}`)}</v></c>`;
    });
  return { files: { transform: { 'xl/worksheets/sheet{id}.xml': { transform } } } };
};

/** A file of these cells, in Office Open XML. */
export const fileOf = (cells: SheetCell[][]): Promise<Blob> => {
  const data: SheetData = cells.map((row, at) =>
    row.map((cell) => {
      const look = at ? {} : { fontWeight: 'bold' as const };
      if (typeof cell !== 'object') return cell ? { value: cell, type: String, ...look } : null;
      const { value, formula, format } = cell;
      const about = format ? { format } : {};
      if (formula) return { value: formula, type: 'Formula' as const, ...about };
      return typeof value === 'number' ? { value, type: Number, ...about } : { value, type: String };
    }),
  );
  const columns = WIDTHS.map((width) => ({ width }));
  return writeExcelFile(data, { columns, stickyRowsCount: 1 }, { features: [withValues(cells)] }).toBlob();
};

/** The working, with its formulas, and the lists of a page as a spreadsheet file. */
export const spreadsheetFile = (
  { reckoning, t }: Pick<Good<Answer>, 'reckoning' | 't'>,
  fields: Fields,
  lists?: (string | number)[][],
): Promise<Blob> =>
  fileOf(
    spreadsheetOf(
      reckoning,
      fields,
      t,
      lists?.map((row) => row.map((cell) => (typeof cell === 'number' ? { value: cell } : cell))),
    ),
  );
