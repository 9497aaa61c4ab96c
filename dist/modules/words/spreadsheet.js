import { sayInFace } from './face-sayings.js';
import { placeKey } from './sheet-formula.js';
import { SheetRows, lengthIn } from './sheet-rows.js';
import { saying } from './sheet-words.js';
import { sayInSpreadsheet } from './spreadsheet-sayings.js';

/** The row below the heads. */
const FIRST_ROW = 2;
/**
 * The rows of a spreadsheet, with lengths in the reader's units. Each row has its name, its value, its unit, how it was got in words
 * that stay true after a change, and how it was got on the page. Below are the `lists`, or else the cut list.
 */
const spreadsheetOf = ({ rows, own }, fields, t, lists = cutCells(own?.cuts ?? [], t)) => {
    const places = new Map();
    const made = new SheetRows(t, places);
    const lines = rows.flatMap((row) => made.of(row, fields));
    const addressOf = (at) => `B${at + FIRST_ROW}`;
    lines.forEach(({ id, entry, label, per }, at) => places.set(placeKey(id, entry), { address: addressOf(at), label, per }));
    // We know which inputs the formulas use only after all are written.
    const written = lines.map(({ cells }) => cells());
    const say = saying(t);
    return [
        headsOf(t),
        ...written.map((cells, at) => noted(cells, lines[at], made.formulas.used.has(addressOf(at)), t)),
        [],
        [say(sayInSpreadsheet('formulasFollow'))],
        ...(lists.length ? [[], ...lists] : []),
    ];
};
const headsOf = (t) => {
    const say = saying(t);
    return [
        t.words.title,
        say(sayInFace('valueHead')),
        say(sayInSpreadsheet('unitColumnHead')),
        say(sayInFace('howHead')),
        say(sayInSpreadsheet('onPageHead')),
    ];
};
/** A row as it is. If it is an input that no formula uses, it says so. */
const noted = (cells, row, isUsed, t) => {
    const [label, value, unit, how] = cells;
    if (!row?.isGiven || typeof value !== 'object' || typeof how !== 'string' || isUsed)
        return cells;
    const note = saying(t)(sayInSpreadsheet('notFollowed'));
    return [label, value, unit, [how, note].filter(Boolean).join('; ')];
};
/** What to cut, in the sizes on the ruler's marks. */
const cutCells = (cuts, t) => {
    if (!cuts.length)
        return [];
    const say = saying(t);
    const size = (length) => ({ value: lengthIn(length, t) });
    const heads = ['cutCountHead', 'cutWidthHead', 'cutLengthHead'];
    return [
        [say(sayInFace('cutCaption')), ...heads.map((head) => say(sayInSpreadsheet(head)))],
        ...cuts.map(({ piece, count, width, length }) => [
            t.say(piece),
            { value: count },
            size(width),
            size(length),
        ]),
    ];
};

export { spreadsheetOf };
