import { isEmptyRow } from '../../calculators/cutting/cut-cells.js';
import { isMessage } from '../../measure/message.js';

const is = (code, issue) => issue.code === code;
/** The line of a row, as a message counts it: empty rows do not count. */
const lineOf = (rows, row) => rows.slice(0, row + 1).filter((one) => !isEmptyRow(one)).length;
/** Whether an issue is about this row. */
const isAboutRow = ({ values }, rows, row) => {
    const { number } = values;
    return number === lineOf(rows, row);
};
/** The name of the piece that a message is about, also if it is about its squares. */
const nameIn = (message) => {
    if (!isMessage(message))
        return undefined;
    const { name, piece } = message.values;
    return name ?? nameIn(piece);
};
/** Whether an issue of the list is about this cell. */
const isAboutCell = (issue, rows, row, cell) => {
    const shown = rows[row];
    if (!shown || isEmptyRow(shown))
        return false;
    const { says, piece } = issue.values;
    if (is('inLine', issue)) {
        const { column } = isMessage(says) ? says.values : {};
        return column === cell && isAboutRow(issue, rows, row);
    }
    if (is('noPiece', issue))
        return cell === 'count';
    return is('ofPiece', issue) && (cell === 'width' || cell === 'length') && nameIn(piece) === shown.piece;
};

export { isAboutCell, isAboutRow };
