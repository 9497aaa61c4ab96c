import { MITRE_SAFETY } from '../trade/conventions.js';
import { readLength, refuse } from './fields.js';

const SIDES = {
    side: { id: 'Sides', label: 'sides', inner: 'Length' },
    end: { id: 'Ends', label: 'top and bottom', inner: 'Width' },
};
/** The top while borders are sewn on, one after the other; each puts its rows into the book. */
class GrowingTop {
    constructor(book) {
        this.book = book;
        const { width, length } = book.values;
        this.width = { value: width, words: '{width}' };
        this.length = { value: length, words: '{length}' };
    }
    /**
     * What to cut for a border, by its number from the inside; from then on the top has it. A cut width that was typed over
     * makes it as wide as that finishes.
     */
    sew(number, corners, wanted) {
        const { book } = this;
        const id = `border${number}`;
        const seams = book.values.seam.mul(2);
        const pieces = [];
        /** A size that can be typed over, from raw edge to raw edge; what it then measures finished. */
        const measured = (rowId, label, { value, words }) => {
            const reckoned = value.add(seams);
            const raw = book.measurable(rowId, label, reckoned, `${words} + 2 × {seam} =${book.onMark(reckoned)}`);
            if (raw.equals(reckoned))
                return { value, words };
            if (raw.lte(seams))
                refuse(`The seams leave nothing of ${book.l(raw)}. Measure from edge to edge, like ${book.l(reckoned)}.`, rowId);
            return { value: raw.sub(seams), words: `{${rowId}} − 2 × {seam}` };
        };
        const cutWidth = (finished, rowId, label) => {
            const row = id + rowId;
            const named = finished.value.gt(0) ? measured(row, `Border ${number}, ${label}`, finished) : finished;
            // It is multiplied further down.
            if (named !== finished && named.words !== finished.words)
                named.words = `(${named.words})`;
            return { named, cut: named.value.add(seams), row };
        };
        const same = wanted.side.value.equals(wanted.end.value);
        const side = cutWidth(wanted.side, 'Width', same ? 'cut width' : 'cut width of the sides');
        const end = same ? side : cutWidth(wanted.end, 'EndsWidth', 'cut width of top and bottom');
        const widths = { side: side.named, end: end.named };
        /** Cuts the two strips that go along such a side of the top; gives back what that side measures. */
        const strips = (piece, before) => {
            if (widths[piece].value.equals(0))
                return before;
            const { id: name, label: where, inner } = SIDES[piece];
            const rowId = id + name;
            const label = `Border ${number}, ${where}`;
            const { cut, row } = piece === 'side' ? side : end;
            const add = (length) => pieces.push({ piece, count: 2, length, width: cut, from: [row, rowId] });
            if (corners !== 'mitred') {
                const now = measured(rowId, label, before);
                add(now.value.add(seams));
                return now;
            }
            const now = measured(`${id}Top${inner}`, `Top’s ${inner.toLowerCase()}, edge to edge, before border ${number}`, before);
            const safety = readLength(MITRE_SAFETY, book.style);
            const length = now.value.add(cut.mul(2)).add(safety);
            book.row(rowId, label, length, `${now.words} + 2 × {${row}} + ${book.n(safety)} =${book.onMark(length)}`);
            add(length);
            return now;
        };
        const grown = (before, { value, words }) => value.equals(0)
            ? before
            : { value: before.value.add(value.mul(2)), words: `${before.words} + 2 × ${words}` };
        let { width, length } = this;
        if (corners === 'ends-first') {
            width = grown(strips('end', width), widths.side);
            length = strips('side', grown(length, widths.end));
        }
        else {
            length = grown(strips('side', length), widths.end);
            width =
                corners === 'sides-first'
                    ? strips('end', grown(width, widths.side))
                    : grown(strips('end', width), widths.side);
        }
        if (corners === 'squares' && pieces.length === 2)
            pieces.push({ piece: 'corner', count: 4, length: end.cut, width: side.cut, from: [side.row, end.row] });
        const stand = (rowId, label, before, now) => {
            if (now === before)
                return before;
            book.row(id + rowId, `${label} with border ${number}`, now.value, `${now.words} =`);
            return { value: now.value, words: `{${id + rowId}}` };
        };
        this.width = stand('FinishedWidth', 'Width', this.width, width);
        this.length = stand('FinishedLength', 'Length', this.length, length);
        return { pieces, ...widths };
    }
    /** How wide a border of its own width at the sides, and at top and bottom, makes the wanted size; can be less than 0. */
    lacking([width, length]) {
        const half = (id, where, wanted, wantedRow, { value, words }) => {
            const lack = wanted.sub(value).div(2);
            this.book.row(id, `Lacking at ${where}`, lack, `(${wantedRow} − ${words}) ÷ 2 =`);
            return { value: lack, words: `{${id}}` };
        };
        return {
            side: half('targetSides', 'each side', width, '{target 0}', this.width),
            end: half('targetEnds', 'top and at bottom', length, '{target 1}', this.length),
        };
    }
}

export { GrowingTop };
