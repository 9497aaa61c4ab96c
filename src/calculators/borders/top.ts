import { usualLength } from '../../ledger/lengths.js';
import { inches, type Quantity } from '../../ledger/quantity.js';
import type { Size } from '../../ledger/quilt.js';
import { toMark, type Exact } from '../../measure/exact.js';
import type { Message } from '../../measure/message.js';
import { MITRE_SAFETY } from '../../trade/conventions.js';
import {
  rowOf,
  say,
  type BorderPart,
  type BordersLedger,
  type BordersSayings,
  type Corners,
  type PieceKind,
} from './shape.js';

/** The finished widths of a border: of its sides, and of top and bottom (`end`). */
export interface Widths {
  side: Quantity;
  end: Quantity;
}

/** Equal pieces of one border, in exact cut sizes. Each size is a row. */
export interface Piece {
  piece: PieceKind;
  count: number;
  length: Quantity;
  width: Quantity;
}

/** The finished width and the cut width of a strip. If the finished width is 0 or less, nothing is cut. */
interface Strip {
  finished: Quantity;
  cut: Quantity | undefined;
}

/** The name of the strips along a side of the top, and the side that they are as long as. */
const ALONG = {
  side: { part: 'Sides', side: 'length', top: 'TopLength' },
  end: { part: 'Ends', side: 'width', top: 'TopWidth' },
} as const;

/** A size with the same addition on both sides. */
const grown = (before: Quantity, by: Quantity): Quantity =>
  by.value.equals(0) ? before : before.plus(by.times(2));

/** One border while we add it to the top: its pieces, and the rows with their sizes. */
class Sewing {
  readonly pieces: Piece[] = [];
  readonly side: Strip;
  readonly end: Strip;
  readonly #seams: Quantity;

  constructor(
    readonly ledger: BordersLedger,
    readonly number: number,
    readonly corners: Corners,
    wanted: Widths,
  ) {
    this.#seams = ledger.inputs.seam.times(2);
    const isEven = wanted.side.value.equals(wanted.end.value);
    this.side = this.#strip('Width', isEven ? 'cutWidth' : 'sidesCutWidth', wanted.side);
    this.end = isEven ? this.side : this.#strip('EndsWidth', 'endsCutWidth', wanted.end);
  }

  #label(is: BordersSayings['borderRow']['is']): Message {
    return say('borderRow', { number: this.number, is });
  }

  #strip(part: BorderPart, is: 'cutWidth' | 'sidesCutWidth' | 'endsCutWidth', finished: Quantity): Strip {
    return finished.value.gt(0)
      ? this.#measured(part, this.#label(is), finished)
      : { finished, cut: undefined };
  }

  /** How a size was got, and the size that is cut if it is between two marks of the ruler. */
  #onMark(size: Quantity): Quantity | Message {
    const cut = toMark(size.value, this.ledger.values.mark);
    return cut.equals(size.value) ? size : say('cutOnMark', { size, cut });
  }

  /** A size from raw edge to raw edge, which the reader can type over; and the finished size that this gives. */
  #measured(part: BorderPart, label: Message, before: Quantity): { finished: Quantity; cut: Quantity } {
    const id = rowOf(this.number, part);
    const reckoned = before.plus(this.#seams);
    const cut = this.ledger.measurable(id, reckoned, { how: this.#onMark(reckoned), label });
    if (cut.value.equals(reckoned.value)) return { finished: before, cut };
    if (cut.value.lte(this.#seams.value))
      this.ledger.refuse(id, say('seamsLeaveNothing', { measured: cut.value, reckoned: reckoned.value }));
    return { finished: cut.minus(this.#seams), cut };
  }

  /** Cuts the two strips along one side of the top. Gives back the length of that side. */
  #along(piece: 'side' | 'end', before: Quantity): Quantity {
    const { cut: width } = this[piece];
    if (!width) return before;
    const { ledger, number, corners } = this;
    const { part, side, top } = ALONG[piece];
    if (corners !== 'mitred') {
      const { finished, cut } = this.#measured(part, this.#label(piece), before);
      this.pieces.push({ piece, count: 2, length: cut, width });
      return finished;
    }
    const { finished } = this.#measured(top, say('topBefore', { number, side }), before);
    const reckoned = finished.plus(width.times(2)).plus(inches(usualLength(MITRE_SAFETY, ledger.style)));
    const length = ledger.row(rowOf(number, part), reckoned, {
      how: this.#onMark(reckoned),
      label: this.#label(piece),
    });
    this.pieces.push({ piece, count: 2, length, width });
    return finished;
  }

  /** Adds it round a top. Gives back the sides of the top with the border. */
  round(top: Size<Quantity>): Size<Quantity> {
    const { corners, side, end, pieces } = this;
    if (corners === 'ends-first') {
      const width = grown(this.#along('end', top.width), side.finished);
      return { width, length: this.#along('side', grown(top.length, end.finished)) };
    }
    const length = grown(this.#along('side', top.length), end.finished);
    const width =
      corners === 'sides-first'
        ? this.#along('end', grown(top.width, side.finished))
        : grown(this.#along('end', top.width), side.finished);
    if (corners === 'squares' && side.cut && end.cut)
      pieces.push({ piece: 'corner', count: 4, length: end.cut, width: side.cut });
    return { width, length };
  }
}

/** The top, to which the borders are added one after the other. Each puts its rows into the ledger. */
export class GrowingTop {
  width: Quantity;
  length: Quantity;

  constructor(readonly ledger: BordersLedger) {
    const { width, length } = ledger.inputs;
    this.width = width;
    this.length = length;
  }

  /**
   * Adds a border, by its number from the inside, and gives what to cut for it. If the reader typed over a cut width, the border is
   * as wide as that cut width finishes.
   */
  sew(number: number, corners: Corners, wanted: Widths): { pieces: Piece[] } & Widths {
    const { ledger } = this;
    const border = new Sewing(ledger, number, corners, wanted);
    const { width, length } = border.round(this);
    const { pieces, side, end } = border;
    if (pieces.length) {
      const label = (side: 'width' | 'length'): { label: Message } => ({
        label: say('topWith', { number, side }),
      });
      this.width = ledger.row(rowOf(number, 'FinishedWidth'), width, label('width'));
      this.length = ledger.row(rowOf(number, 'FinishedLength'), length, label('length'));
    }
    return { pieces, side: side.finished, end: end.finished };
  }

  /** How wide a border has to be at the sides, and at top and bottom, to reach the wanted size. It can be less than 0. */
  lacking([width, length]: [Exact, Exact]): Widths {
    const { ledger } = this;
    const half = (id: 'targetSides' | 'targetEnds', wanted: Quantity, now: Quantity): Quantity =>
      ledger.row(id, wanted.minus(now).over(2));
    return {
      side: half('targetSides', ledger.entry('target', 0, width), this.width),
      end: half('targetEnds', ledger.entry('target', 1, length), this.length),
    };
  }
}
