import { Money, Purchase } from '../ledger/purchase.js';
import { exact, isExact, upTo } from '../measure/exact.js';
import { decimal } from '../measure/format.js';
import { toUnit } from '../measure/units.js';
import { sayInFace } from '../words/face-sayings.js';

/** A cell of a list in a spreadsheet: a length in the reader's units, money and what is bought as numbers. */
const spreadsheetCell = (cell, t) => {
    if (typeof cell === 'number')
        return cell;
    if (isExact(cell))
        return +decimal(toUnit(cell, t.style.units), 4);
    if (cell instanceof Money)
        return +decimal(cell.value, 4);
    // A third of a yard is not 0.3333, because that would be too little.
    if (cell instanceof Purchase)
        return +decimal(upTo(cell.amount, exact(1, 10_000)), 4);
    return t.cell(cell);
};
/** The working and the cut list as plain cells. Lengths come as shown and as decimal inches. */
const cellsOf = (working, { cuts }, t) => [
    [
        t.say(sayInFace('rowHead')),
        t.say(sayInFace('valueHead')),
        t.say(sayInFace('inchesHead')),
        t.say(sayInFace('howHead')),
    ],
    ...working.map(({ label, value, inches, how }) => [
        label,
        value,
        inches ? +decimal(exact(inches), 4) : '',
        how,
    ]),
    ...cuts.map((cut) => [t.say(sayInFace('cutCell', cut)), t.size(cut), '', t.say(sayInFace('times', cut))]),
];
/**
 * A spreadsheet would run a cell that begins like a formula, so a quote mark keeps it text. The same goes for text after a separator
 * in the cell: a spreadsheet with another separator starts a new cell there.
 */
const inert = (cell) => cell
    .replace(/(^|[;,\t\r\n])["\s]*(?=[=+@＝＋－＠]|-(?!\d+([.,]\d+)?($|[;,\t\r\n])))/g, "$&'")
    .replace(/^(?=[\t\r\n])/, "'");
const rowsOf = (cells, comma, between, end, write) => {
    const text = (cell) => typeof cell === 'number' && comma ? String(cell).replace('.', ',') : String(cell);
    return cells.map((row) => row.map((cell) => write(inert(text(cell)))).join(between) + end).join('');
};
/**
 * RFC 4180, with a byte-order mark so that every program reads UTF-8. If the language writes a decimal comma, its spreadsheets
 * expect semicolons between cells, and would read a number with a point as a date or a word.
 */
const csvOf = (cells, comma) => '\uFEFF' +
    rowsOf(cells, comma, comma ? ';' : ',', '\r\n', (cell) => (comma ? /[";\t\r\n]/ : /[",;\t\r\n]/).test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);
/** Tabs between cells: pastes into the columns of any spreadsheet. */
const tabbedOf = (cells, comma) => rowsOf(cells, comma, '\t', '\n', (cell) => cell.replace(/\s+/g, ' '));
/** Offers a file to the reader. */
const download = (name, content, about) => {
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([content], about));
    link.download = name;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 1000);
};

export { cellsOf, csvOf, download, spreadsheetCell, tabbedOf };
