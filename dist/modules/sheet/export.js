import { exact } from '../measure/exact.js';
import { decimal } from '../measure/format.js';

/** The working and the cut list as plain cells. Lengths come as shown and as decimal inches. */
const cellsOf = ({ working, cuts }) => [
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
const inert = (cell) => String(cell).replace(/^(?=[=+@\t\r]|-(?!\d+(\.\d+)?$))/, "'");
const rowsOf = (cells, between, end, write) => cells.map((row) => row.map((cell) => write(inert(cell))).join(between) + end).join('');
/** RFC 4180, with a byte-order mark so that every program reads UTF-8. */
const csvOf = (cells) => '\uFEFF' +
    rowsOf(cells, ',', '\r\n', (cell) => (/[",\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell));
/** Tabs between cells: pastes into the columns of any spreadsheet. */
const tabbedOf = (cells) => rowsOf(cells, '\t', '\n', (cell) => cell.replace(/\s+/g, ' '));
/** Offers a file to the reader. */
const download = (name, text) => {
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([text], { type: 'text/csv' }));
    link.download = name;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 1000);
};

export { cellsOf, csvOf, download, tabbedOf };
