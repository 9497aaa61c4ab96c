import { Branded } from '../measure/brand.js';
import {
  exact,
  isExact,
  least,
  nearestTo,
  rootUp,
  toMark,
  upTo,
  ZERO,
  type Exact,
} from '../measure/exact.js';

/** What a number is: this decides how it is shown, and what it may be added to. */
export type Kind = 'length' | 'count' | 'number' | 'percent' | 'money';

/**
 * How a number was got from others. `row` is another row of the sheet and `number` a number written as it is; `result` shows
 * only its number, though it knows how it was got; `up` is rounded up to whole steps, `step` to whole ones of the size, among
 * several, that comes to least, `mark` to a mark of the ruler, and `coin` to the nearest coin.
 */
export type Operation =
  'number' | 'row' | '+' | '−' | '×' | '÷' | '×√2' | '÷√2' | '√' | 'up' | 'step' | 'mark' | 'coin' | 'result';

/** Roots are not exact: these are never short. */
const rootOfTwoTimes = (side: Exact): Exact => rootUp(side.mul(side).mul(2));

/**
 * A number that knows how it was got: its exact value, and the operation and the quantities that it was reckoned with. It is
 * reckoned once, by the same call that writes its formula down, so that a number and its working cannot differ.
 */
export class Quantity extends Branded {
  override get brand(): 'quantity' {
    return 'quantity';
  }

  constructor(
    readonly value: Exact,
    readonly kind: Kind,
    readonly operation: Operation = 'number',
    readonly parts: readonly Quantity[] = [],
    /** Of a `row`: its id, and which entry, where the row holds a list. */
    readonly row = '',
    readonly entry = 0,
  ) {
    super();
  }

  plus(other: Quantity): Quantity {
    return this.#with('+', this.value.add(other.value), other);
  }

  minus(other: Quantity): Quantity {
    return this.#with('−', this.value.sub(other.value), other);
  }

  /** So many of it, `2 × 4`, or a part of it, `40 × (1 − 3 %)`. */
  times(other: Quantity | number): Quantity {
    if (typeof other === 'number') return count(other).times(this);
    const by = other;
    const kind = this.kind === 'length' ? 'length' : by.kind === 'count' ? this.kind : by.kind;
    return new Quantity(this.value.mul(by.value), kind, '×', [this, by]);
  }

  over(other: Quantity | number): Quantity {
    const by = typeof other === 'number' ? count(other) : other;
    const kind = this.kind === 'length' && by.kind === 'length' ? 'number' : this.kind;
    return new Quantity(this.value.div(by.value), kind, '÷', [this, by]);
  }

  /** What is left of it after so many percent are lost: `× (1 − 3 %)`. */
  lessPercent(percent: Quantity): Quantity {
    return this.times(ONE_WHOLE.minus(percent));
  }

  /** What so many percent are lost of, where this is what is left: `÷ (1 − 3 %)`. */
  beforeLoss(percent: Quantity): Quantity {
    return this.over(ONE_WHOLE.minus(percent));
  }

  /** The diagonal of a square with this side, never short. */
  diagonal(): Quantity {
    return this.#with('×√2', rootOfTwoTimes(this.value));
  }

  /** The side of a square with this diagonal, never short. */
  sideOfDiagonal(): Quantity {
    return this.#with('÷√2', rootOfTwoTimes(this.value).div(2));
  }

  /** Its square root, never short: the side of a square with this area. */
  root(): Quantity {
    return this.#with('√', rootUp(this.value));
  }

  /** Rounded up to whole steps. */
  upTo(step: Quantity): Quantity {
    return this.#with('up', upTo(this.value, step.value), step);
  }

  /** Rounded up to what a shop cuts: whole steps of one of these sizes, whichever is less. */
  upToLeast(sizes: Quantity[]): Quantity {
    const value = least(...sizes.map((size) => upTo(this.value, size.value)));
    return new Quantity(value, this.kind, 'step', [this, ...sizes]);
  }

  /** So much money as can be paid. */
  inCoins(coin: Exact): Quantity {
    const nearest = nearestTo(this.value, coin);
    return new Quantity(nearest, 'money', 'coin', [this, new Quantity(coin, 'money')]);
  }

  /** On a mark of the ruler. */
  onMark(mark: Quantity): Quantity {
    return this.#with('mark', toMark(this.value, mark.value), mark);
  }

  /** The same number, shown as a number and not by its formula. */
  asResult(): Quantity {
    return new Quantity(this.value, this.kind, 'result', [this]);
  }

  /** The same number as a row of the sheet holds it. */
  inRow(row: string, entry = 0): Quantity {
    return new Quantity(this.value, this.kind, 'row', [], row, entry);
  }

  /** Adds the rows it was reckoned from. */
  rowsInto(rows: Set<string>): void {
    if (this.operation === 'row') rows.add(this.row);
    for (const part of this.parts) part.rowsInto(rows);
  }

  #with(operation: Operation, value: Exact, other?: Quantity): Quantity {
    return new Quantity(value, this.kind, operation, other ? [this, other] : [this]);
  }
}

/** An input that is no number, as a sentence shows it: what stands in its row. */
export class Stated extends Branded {
  override get brand(): 'stated' {
    return 'stated';
  }

  constructor(
    readonly row: string,
    readonly text: string,
  ) {
    super();
  }
}

/** A length of so many inches. */
export const inches = (value: Exact | number | string): Quantity =>
  new Quantity(isExact(value) ? value : exact(value), 'length');

/** So many of something. */
export const count = (value: number): Quantity => new Quantity(exact(value), 'count');

export const ONE_WHOLE = new Quantity(exact(1), 'number');

/** All of them added; nothing, as a length, where there are none. */
export const total = (quantities: Quantity[]): Quantity => {
  const [first, ...more] = quantities;
  return first ? more.reduce((all, one) => all.plus(one), first) : inches(ZERO);
};
