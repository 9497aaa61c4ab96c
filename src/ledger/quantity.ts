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

/** What a number is. This decides how it is shown, and what may be added to it. */
export type Kind = 'length' | 'count' | 'number' | 'percent' | 'money';

/**
 * How a number was got from others:
 * - `row`: it is the value of another row
 * - `number`: it is a number of its own
 * - `result`: it knows how it was got, but shows only its value
 * - `up`: rounded up to whole steps
 * - `step`: rounded up to whole steps of one of several sizes, the one that gives the least
 * - `mark`: rounded to a mark of the ruler
 * - `coin`: rounded to the nearest coin
 */
export type Operation =
  'number' | 'row' | '+' | '−' | '×' | '÷' | '×√2' | '÷√2' | '√' | 'up' | 'step' | 'mark' | 'coin' | 'result';

/** A root is not exact. This one is never short. */
const rootOfTwoTimes = (side: Exact): Exact => rootUp(side.mul(side).mul(2));

/**
 * A number that knows how it was got: an exact value, with the operation and the quantities that gave it. The same call works out
 * the value and keeps the formula. So the number and its working cannot differ.
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
    /** For a `row`: its id, and which entry, if the row holds a list. */
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

  /** A multiple, `2 × 4`, or a part, `40 × (1 − 3 %)`. */
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

  /** What is left after a loss in percent: `× (1 − 3 %)`. */
  lessPercent(percent: Quantity): Quantity {
    return this.times(ONE_WHOLE.minus(percent));
  }

  /** What was there before a loss in percent: `÷ (1 − 3 %)`. */
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

  /** Rounded up to what a shop cuts: whole steps of one of these sizes, the one that gives less. */
  upToLeast(sizes: Quantity[]): Quantity {
    const value = least(...sizes.map((size) => upTo(this.value, size.value)));
    return new Quantity(value, this.kind, 'step', [this, ...sizes]);
  }

  /** Rounded to money that can be paid. */
  inCoins(coin: Exact): Quantity {
    const nearest = nearestTo(this.value, coin);
    return new Quantity(nearest, 'money', 'coin', [this, new Quantity(coin, 'money')]);
  }

  /** On a mark of the ruler. */
  onMark(mark: Quantity): Quantity {
    return this.#with('mark', toMark(this.value, mark.value), mark);
  }

  /** The same number, which now shows its value and not its formula. */
  asResult(): Quantity {
    return new Quantity(this.value, this.kind, 'result', [this]);
  }

  /** The same number as the value of a row. */
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

/** The text of an input that is not a number, for a sentence. */
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

/** A length in inches. */
export const inches = (value: Exact | number | string): Quantity =>
  new Quantity(isExact(value) ? value : exact(value), 'length');

/** A count. */
export const count = (value: number): Quantity => new Quantity(exact(value), 'count');

export const ONE_WHOLE = new Quantity(exact(1), 'number');

/** The sum of all, or a length of 0 if there are none. */
export const total = (quantities: Quantity[]): Quantity => {
  const [first, ...more] = quantities;
  return first ? more.reduce((all, one) => all.plus(one), first) : inches(ZERO);
};
