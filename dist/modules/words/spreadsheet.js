import { sayInFace } from './face-sayings.js';
import { placeKey } from './sheet-formula.js';
import { SheetRows, lengthIn } from './sheet-rows.js';
import { saying } from './sheet-words.js';
import { sayInSpreadsheet } from './spreadsheet-sayings.js';

/** The rows stand under their heads. */
const FIRST_ROW = 2;
/**
 * A reckoning as the rows of a spreadsheet, all lengths in the reader's units: what each row is, its value, its unit, how it
 * was got in words that hold whatever is changed there, and how it was got on the page. Then `lists`, or else what to cut.
 */
const spreadsheetOf = ({ rows, own }, fields, t, lists = cutCells(own?.cuts ?? [], t)) => {
    const places = new Map();
    const made = new SheetRows(t, places);
    const lines = rows.flatMap((row) => made.of(row, fields));
    const addressOf = (at) => `B${at + FIRST_ROW}`;
    lines.forEach(({ id, entry, label, per }, at) => places.set(placeKey(id, entry), { address: addressOf(at), label, per }));
    // Which inputs some formula goes by is known once all are written.
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
/** A row as it is; a number that was given, and that no formula goes by, says so. */
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
