import writeExcelFile from 'write-excel-file/universal';
import { spreadsheetOf } from '../words/spreadsheet.js';

/** How wide the columns are, in digits: what a row is, its value, its unit, how it was got. */
const WIDTHS = [34, 14, 10, 60, 60];
const addressOf = (row, column) => `${String.fromCharCode('A'.charCodeAt(0) + column)}${row + 1}`;
/** Signs that mean something in the file's own language. */
const ESCAPED = { '&': '&amp;', '<': '&lt;', '>': '&gt;' };
const escaped = (text) => text.replace(/[&<>]/g, (sign) => ESCAPED[sign] ?? sign);
/**
 * Adds the value of each formula. A mail program’s preview works out nothing, and neither does a spreadsheet program that does not
 * trust a file from the web yet.
 */
const withValues = (cells) => {
    const values = new Map();
    cells.forEach((row, at) => row.forEach((cell, column) => {
        if (typeof cell === 'object' && cell.formula)
            values.set(addressOf(at, column), cell.value);
    }));
    const transform = (xml) => xml.replace(/(<c r="([A-Z]+\d+)"[^>]*)>(<f>.*?<\/f>)<\/c>/gs, (whole, cell, address, formula) => {
        const value = values.get(String(address));
        if (value === undefined)
            return whole;
        const type = typeof value === 'string' ? ' t="str"' : '';
        return `${String(cell)}${type}>${String(formula)}<v>${escaped(`${value}`)}</v></c>`;
    });
    return { files: { transform: { 'xl/worksheets/sheet{id}.xml': { transform } } } };
};
/** A file of these cells, in Office Open XML. */
const fileOf = (cells) => {
    const data = cells.map((row, at) => row.map((cell) => {
        const look = at ? {} : { fontWeight: 'bold' };
        if (typeof cell !== 'object')
            return cell ? { value: cell, type: String, ...look } : null;
        const { value, formula, format } = cell;
        const about = format ? { format } : {};
        if (formula)
            return { value: formula, type: 'Formula', ...about };
        return typeof value === 'number' ? { value, type: Number, ...about } : { value, type: String };
    }));
    const columns = WIDTHS.map((width) => ({ width }));
    return writeExcelFile(data, { columns, stickyRowsCount: 1 }, { features: [withValues(cells)] }).toBlob();
};
/** The working, with its formulas, and the lists of a page as a spreadsheet file. */
const spreadsheetFile = ({ reckoning, t }, fields, lists) => fileOf(spreadsheetOf(reckoning, fields, t, lists?.map((row) => row.map((cell) => (typeof cell === 'number' ? { value: cell } : cell)))));

export { fileOf, spreadsheetFile };
