import { onSheets, planned, SHEET_HINT } from './planned.js';
import { CUT_LINE } from './examples.js';

const CELLS = {
    fabric: 'Fabric',
    piece: 'Piece',
    width: 'Width',
    length: 'Length',
    count: 'How many',
    way: 'Cut as',
};
const WAYS = {
    rectangle: 'square or rectangle',
    'rectangle-finished': 'rectangle, finished',
    half: 'half-square triangles',
    'half-finished': 'half-squares, finished',
    quarter: 'quarter-square triangles',
    'quarter-finished': 'quarter-squares, finished',
};
const FOLDS = ['without a fold', 'folded once, selvage to selvage', 'folded twice, in four layers'];
/** The cutting plan's words in English. */
const cutting = {
    title: 'Cutting plan',
    labels: {
        list: 'Cut list',
        sheet: 'Cut from',
        seam: 'Seam allowance',
        oneWay: 'One-way print',
        ruler: 'Ruler, length',
        mat: 'Cutting mat',
        week: 'Week',
        price: 'Price of a yard, a metre or a sheet',
    },
    hints: {
        list: 'one row for each piece; a square needs no length',
        sheet: SHEET_HINT,
        seam: 'we add it to finished sizes',
    },
    options: {},
    entries: {},
    sentences: {
        ...planned,
        ...onSheets,
        // The cut list.
        piece: ({ name }) => name || 'piece',
        inLine: ({ number, piece, says }, t) => `Row ${number}${piece ? `, ${piece}` : ''}: ${t.say(says)}`,
        inColumn: ({ says }, t) => t.say(says),
        cellsTogether: (_, t) => `Put | between its parts, like ${t.forUnits(CUT_LINE)}.`,
        sizeOfZero: ({ text }, t) => `${t.quote(text)}: a size has to be more than 0. Write it like ${t.forUnits({ in: '3 1/2 or 3 1/2 x 6 1/2', cm: '9 or 9 x 16.5' })}.`,
        noCount: ({ text }, t) => `${text ? `${t.quote(text)} is not a number of pieces` : 'How many is missing'}. Write it like 12.`,
        countTooLarge: 'That is more than a million pieces. Write fewer, like 1000.',
        emptyList: (_, t) => `The cut list is empty. Write a line like ${t.forUnits(CUT_LINE)}.`,
        noSizeColumn: 'The cut list has no column for the cut size. Head one “Cut size”.',
        noCountColumn: 'The cut list has no column for the number of pieces. Head one “How many”.',
        tooManyLines: ({ most }) => `A cut list of more than ${most} lines is more than can be planned at once. Plan it in parts, like ${most / 2} lines each.`,
        noPiece: 'The cut list has no pieces yet. Write how many, like 12.',
        // Its cells.
        cellHead: ({ cell }) => CELLS[cell],
        cellName: ({ row, cell }) => `Row ${row}, ${CELLS[cell].toLowerCase()}`,
        cutWay: ({ way }) => WAYS[way],
        // What is worth saying.
        foldAcross: ({ folds, reach }, t) => folds
            ? `Cut each strip across the cloth ${FOLDS[folds] ?? ''}, so that the cut fits a ${t.l(reach)} ruler.`
            : `A ${t.l(reach)} ruler reaches across: cut each strip without a fold.`,
        tooWideToFold: ({ width, reach }, t) => `A cut across ${t.l(width)} does not fit a ruler and mat of ${t.l(reach)}, even folded in four layers: cut the cloth to a narrower width first.`,
        foldStrips: ({ reach }, t) => `Fold a strip that is taller than ${t.l(reach)} once, end to end, before you cut pieces from it.`,
        tooTallToFold: ({ height }, t) => `A strip ${t.l(height)} tall is longer than the ruler even folded once: mark it and cut it with scissors.`,
    },
};

export { cutting };
