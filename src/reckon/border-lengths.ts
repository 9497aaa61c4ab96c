import { exact, toMark, ZERO, type Exact } from '../measure/exact.js';
import { MITRE_SAFETY } from '../trade/conventions.js';
import type { Book } from './book.js';
import { Refusal, type Fields } from './fields.js';

/** A border's finished width at two opposite sides, and the row it is from. */
export interface Width {
  value: Exact;
  from: string;
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

/** One side of the top as it stands: what it measures finished, how that is written, and the rows it is from. */
interface Side {
  value: Exact;
  words: string;
  from: string[];
}

const SIDES = {
  side: { id: 'Sides', label: 'sides', inner: 'Length' },
  end: { id: 'Ends', label: 'top and bottom', inner: 'Width' },
} as const;

/** The top while borders are sewn on, one after the other; each puts its rows into the book. */
export class GrowingTop {
  width: Side;
  length: Side;

  constructor(
    readonly book: Pick<Book<Fields>, 'n' | 'l' | 'row' | 'measurable'>,
    readonly seam: Exact,
    readonly mark: Exact,
    width: Exact,
    length: Exact,
  ) {
    this.width = { value: width, words: book.n(width), from: ['width'] };
    this.length = { value: length, words: book.n(length), from: ['length'] };
  }

  /** What to cut for a border, by its number from the inside; from then on the top has it. */
  sew(number: number, corners: string, widths: { side: Width; end: Width }): Piece[] {
    const { book, seam } = this;
    const { n, l } = book;
    const id = `border${number}`;
    const seams = seam.mul(2);
    const pieces: Piece[] = [];

    const cutWidth = ({ value, from }: Width, rowId: string, label: string): { cut: Exact; id: string } => {
      const cut = value.add(seams);
      const how = `${n(value)} + 2 × ${n(seam)} = ${l(cut)}${this.#onMark(cut)}`;
      if (value.gt(ZERO)) book.row(id + rowId, `Border ${number}, ${label}`, cut, how, [from, 'seam']);
      return { cut, id: id + rowId };
    };
    const same = widths.side.value.equals(widths.end.value);
    const side = cutWidth(widths.side, 'Width', same ? 'cut width' : 'cut width of the sides');
    const end = same ? side : cutWidth(widths.end, 'EndsWidth', 'cut width of top and bottom');

    /** A length that can be measured on the top itself, from raw edge to raw edge. */
    const measure = (rowId: string, label: string, at: Side): { raw: Exact; at: Side } => {
      const reckoned = at.value.add(seams);
      const how = `${at.words} + 2 × ${n(seam)} = ${l(reckoned)}${this.#onMark(reckoned)}`;
      const raw = book.measurable(rowId, label, reckoned, how, [...at.from, 'seam']);
      if (raw.equals(reckoned)) return { raw, at };
      if (raw.lte(seams))
        throw new Refusal(
          `Two seams of ${l(seam)} leave nothing of ${l(raw)}. Measure from edge to edge, like ${l(reckoned)}.`,
          rowId,
        );
      return {
        raw,
        at: { value: raw.sub(seams), words: `${n(raw)} − 2 × ${n(seam)}`, from: [rowId, 'seam'] },
      };
    };
    /** Cuts the two strips that go along such a side of the top. */
    const strips = (piece: 'side' | 'end', at: Side): Side => {
      if (widths[piece].value.equals(ZERO)) return at;
      const { id: rowId, label: where, inner } = SIDES[piece];
      const label = `Border ${number}, ${where}`;
      const cut = (length: Exact): void => {
        const width = piece === 'side' ? side : end;
        pieces.push({ piece, count: 2, length, width: width.cut, from: [width.id, id + rowId] });
      };
      if (corners !== 'mitred') {
        const measured = measure(id + rowId, label, at);
        cut(measured.raw);
        return measured.at;
      }
      const safety = exact(MITRE_SAFETY.replace(' in', ''));
      const measured = measure(
        `${id}Top${inner}`,
        `Top’s raw ${inner.toLowerCase()} before border ${number}`,
        at,
      ).at;
      const length = measured.value.add(side.cut.mul(2)).add(safety);
      book.row(
        id + rowId,
        label,
        length,
        `${measured.words} + 2 × ${n(side.cut)} + ${n(safety)} = ${l(length)}${this.#onMark(length)}`,
        [...measured.from, side.id],
      );
      cut(length);
      return measured;
    };
    const grown = (at: Side, { value, from }: Width): Side =>
      value.equals(ZERO)
        ? at
        : {
            value: at.value.add(value.mul(2)),
            words: `${at.words} + 2 × ${n(value)}`,
            from: [...at.from, from],
          };

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
      pieces.push({ piece: 'corner', count: 4, length: end.cut, width: side.cut, from: [side.id, end.id] });
    this.width = this.#stand(`${id}FinishedWidth`, `Width with border ${number}`, this.width, width);
    this.length = this.#stand(`${id}FinishedLength`, `Length with border ${number}`, this.length, length);
    return pieces;
  }

  /** How wide a border of its own width at the sides, and at top and bottom, makes the wanted size; can be less than 0. */
  lacking([width, length]: [Exact, Exact]): { side: Width; end: Width } {
    const { n, l } = this.book;
    const half = (id: string, label: string, wanted: Exact, { value, from }: Side): Width => {
      const lack = wanted.sub(value).div(2);
      this.book.row(id, label, lack, `(${n(wanted)} − ${n(value)}) ÷ 2 = ${l(lack)}`, ['target', ...from]);
      return { value: lack, from: id };
    };
    return {
      side: half('targetSides', 'Lacking at each side', width, this.width),
      end: half('targetEnds', 'Lacking at top and at bottom', length, this.length),
    };
  }

  #onMark(size: Exact): string {
    const cut = toMark(size, this.mark);
    return cut.equals(size) ? '' : `, cut ${this.book.l(cut)}`;
  }

  #stand(id: string, label: string, before: Side, now: Side): Side {
    if (now === before) return before;
    const { n, l } = this.book;
    this.book.row(id, label, now.value, `${now.words} = ${l(now.value)}`, now.from);
    return { value: now.value, words: n(now.value), from: [id] };
  }
}
