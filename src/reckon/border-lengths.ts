import type { Exact } from '../measure/exact.js';
import { MITRE_SAFETY } from '../trade/conventions.js';
import type { Book } from './book.js';
import type { bordersFields } from './borders.js';
import { readLength, refuse } from './fields.js';

/** A length, and how a row names it: `{width} + 2 × {borders 0}`. */
export interface Named {
  value: Exact;
  words: string;
}

/** A border's finished widths: of its sides, and of top and bottom (`end`). */
export interface Widths {
  side: Named;
  end: Named;
}

/** Equal pieces of one border, in exact cut sizes. */
export interface Piece {
  piece: 'side' | 'end' | 'corner';
  count: number;
  length: Exact;
  width: Exact;
  /** The rows that the sizes are from. */
  from: string[];
}

/** A border's strip, as it is cut and as it finishes, and the row that says so. */
interface Strip {
  named: Named;
  cut: Exact;
  row: string;
}

const SIDES = {
  side: { id: 'Sides', label: 'sides', inner: 'Length' },
  end: { id: 'Ends', label: 'top and bottom', inner: 'Width' },
} as const;

/** The top while borders are sewn on, one after the other; each puts its rows into the book. */
export class GrowingTop {
  width: Named;
  length: Named;

  constructor(readonly book: Book<typeof bordersFields>) {
    const { width, length } = book.values;
    this.width = { value: width, words: '{width}' };
    this.length = { value: length, words: '{length}' };
  }

  /**
   * What to cut for a border, by its number from the inside; from then on the top has it. A cut width that was typed over
   * makes it as wide as that finishes.
   */
  sew(number: number, corners: string, wanted: Widths): { pieces: Piece[] } & Widths {
    const { book } = this;
    const id = `border${number}`;
    const seams = book.values.seam.mul(2);
    const pieces: Piece[] = [];

    /** A size that can be typed over, from raw edge to raw edge; what it then measures finished. */
    const measured = (rowId: string, label: string, { value, words }: Named): Named => {
      const reckoned = value.add(seams);
      const raw = book.measurable(rowId, label, reckoned, `${words} + 2 × {seam} =${book.onMark(reckoned)}`);
      if (raw.equals(reckoned)) return { value, words };
      if (raw.lte(seams))
        refuse(
          `The seams leave nothing of ${book.l(raw)}. Measure from edge to edge, like ${book.l(reckoned)}.`,
          rowId,
        );
      return { value: raw.sub(seams), words: `{${rowId}} − 2 × {seam}` };
    };
    const cutWidth = (finished: Named, rowId: string, label: string): Strip => {
      const row = id + rowId;
      const named = finished.value.gt(0) ? measured(row, `Border ${number}, ${label}`, finished) : finished;
      // It is multiplied further down.
      if (named !== finished && named.words !== finished.words) named.words = `(${named.words})`;
      return { named, cut: named.value.add(seams), row };
    };
    const same = wanted.side.value.equals(wanted.end.value);
    const side = cutWidth(wanted.side, 'Width', same ? 'cut width' : 'cut width of the sides');
    const end = same ? side : cutWidth(wanted.end, 'EndsWidth', 'cut width of top and bottom');
    const widths = { side: side.named, end: end.named };
    /** Cuts the two strips that go along such a side of the top; gives back what that side measures. */
    const strips = (piece: 'side' | 'end', before: Named): Named => {
      if (widths[piece].value.equals(0)) return before;
      const { id: name, label: where, inner } = SIDES[piece];
      const rowId = id + name;
      const label = `Border ${number}, ${where}`;
      const { cut, row } = piece === 'side' ? side : end;
      const add = (length: Exact) => pieces.push({ piece, count: 2, length, width: cut, from: [row, rowId] });
      if (corners !== 'mitred') {
        const now = measured(rowId, label, before);
        add(now.value.add(seams));
        return now;
      }
      const now = measured(
        `${id}Top${inner}`,
        `Top’s ${inner.toLowerCase()}, edge to edge, before border ${number}`,
        before,
      );
      const safety = readLength(MITRE_SAFETY, book.style);
      const length = now.value.add(cut.mul(2)).add(safety);
      book.row(
        rowId,
        label,
        length,
        `${now.words} + 2 × {${row}} + ${book.n(safety)} =${book.onMark(length)}`,
      );
      add(length);
      return now;
    };
    const grown = (before: Named, { value, words }: Named): Named =>
      value.equals(0)
        ? before
        : { value: before.value.add(value.mul(2)), words: `${before.words} + 2 × ${words}` };

    let { width, length } = this;
    if (corners === 'ends-first') {
      width = grown(strips('end', width), widths.side);
      length = strips('side', grown(length, widths.end));
    } else {
      length = grown(strips('side', length), widths.end);
      width =
        corners === 'sides-first'
          ? strips('end', grown(width, widths.side))
          : grown(strips('end', width), widths.side);
    }
    if (corners === 'squares' && pieces.length === 2)
      pieces.push({ piece: 'corner', count: 4, length: end.cut, width: side.cut, from: [side.row, end.row] });
    const stand = (rowId: string, label: string, before: Named, now: Named): Named => {
      if (now === before) return before;
      book.row(id + rowId, `${label} with border ${number}`, now.value, `${now.words} =`);
      return { value: now.value, words: `{${id + rowId}}` };
    };
    this.width = stand('FinishedWidth', 'Width', this.width, width);
    this.length = stand('FinishedLength', 'Length', this.length, length);
    return { pieces, ...widths };
  }

  /** How wide a border of its own width at the sides, and at top and bottom, makes the wanted size; can be less than 0. */
  lacking([width, length]: [Exact, Exact]): Widths {
    const half = (
      id: string,
      where: string,
      wanted: Exact,
      wantedRow: string,
      { value, words }: Named,
    ): Named => {
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
