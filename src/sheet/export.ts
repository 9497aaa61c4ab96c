import { exact } from '../measure/exact.js';
import { decimal } from '../measure/format.js';
import type { Answer } from '../reckon/answer.js';

/** Rows of cells, the heads first. Numbers stay numbers, so that a spreadsheet can add them up. */
export type Cells = (string | number)[][];

/** The working and the cut list as plain cells. Lengths come as shown and as decimal inches. */
export const cellsOf = ({ working, cuts }: Answer): Cells => [
  ['Row', 'Value', 'Inches', 'How it was got'],
  ...working.map(({ label, value, inches, how }) => [
    label,
    value,
    inches ? +decimal(exact(inches), 4) : '',
    how,
  ]),
  ...cuts.map(({ piece, text, count }) => [`Cut: ${piece}`, text, '', `${count} ×`]),
];

/** A cell that begins like a formula would be reckoned by a spreadsheet; a quote mark keeps it text. */
const inert = (cell: string | number): string =>
  String(cell).replace(/^(?=[=+@\t\r]|-(?!\d+(\.\d+)?$))/, "'");

const rowsOf = (cells: Cells, between: string, end: string, write: (cell: string) => string): string =>
  cells.map((row) => row.map((cell) => write(inert(cell))).join(between) + end).join('');

/** RFC 4180, with a byte-order mark so that every program reads UTF-8. */
export const csvOf = (cells: Cells): string =>
  '\uFEFF' +
  rowsOf(cells, ',', '\r\n', (cell) => (/[",\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell));

/** Tabs between cells: pastes into the columns of any spreadsheet. */
export const tabbedOf = (cells: Cells): string =>
  rowsOf(cells, '\t', '\n', (cell) => cell.replace(/\s+/g, ' '));

/** Offers a file to the reader. */
export const download = (name: string, text: string): void => {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type: 'text/csv' }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 1000);
};
