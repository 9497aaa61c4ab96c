import { Branded } from '../measure/brand.js';
import { exact, rootUp, upTo, least, nearestTo, toMark, isExact, ZERO } from '../measure/exact.js';

var _a;
/** A root is not exact. This one is never short. */
const rootOfTwoTimes = (side) => rootUp(side.mul(side).mul(2));
/**
 * A number that knows how it was got: an exact value, with the operation and the quantities that gave it. The same call works out
 * the value and keeps the formula. So the number and its working cannot differ.
 */
class Quantity extends Branded {
    get brand() {
        return 'quantity';
    }
    constructor(value, kind, operation = 'number', parts = [], 
    /** For a `row`: its id, and which entry, if the row holds a list. */
    row = '', entry = 0) {
        super();
        this.value = value;
        this.kind = kind;
        this.operation = operation;
        this.parts = parts;
        this.row = row;
        this.entry = entry;
    }
    plus(other) {
        return this.#with('+', this.value.add(other.value), other);
    }
    minus(other) {
        return this.#with('−', this.value.sub(other.value), other);
    }
    /** A multiple, `2 × 4`, or a part, `40 × (1 − 3 %)`. */
    times(other) {
        if (typeof other === 'number')
            return count(other).times(this);
        const by = other;
        const kind = this.kind === 'length' ? 'length' : by.kind === 'count' ? this.kind : by.kind;
        return new _a(this.value.mul(by.value), kind, '×', [this, by]);
    }
    over(other) {
        const by = typeof other === 'number' ? count(other) : other;
        const kind = this.kind === 'length' && by.kind === 'length' ? 'number' : this.kind;
        return new _a(this.value.div(by.value), kind, '÷', [this, by]);
    }
    /** What is left after a loss in percent: `× (1 − 3 %)`. */
    lessPercent(percent) {
        return this.times(ONE_WHOLE.minus(percent));
    }
    /** What was there before a loss in percent: `÷ (1 − 3 %)`. */
    beforeLoss(percent) {
        return this.over(ONE_WHOLE.minus(percent));
    }
    /** The diagonal of a square with this side, never short. */
    diagonal() {
        return this.#with('×√2', rootOfTwoTimes(this.value));
    }
    /** The side of a square with this diagonal, never short. */
    sideOfDiagonal() {
        return this.#with('÷√2', rootOfTwoTimes(this.value).div(2));
    }
    /** Its square root, never short: the side of a square with this area. */
    root() {
        return this.#with('√', rootUp(this.value));
    }
    /** Rounded up to whole steps. */
    upTo(step) {
        return this.#with('up', upTo(this.value, step.value), step);
    }
    /** Rounded up to what a shop cuts: whole steps of one of these sizes, the one that gives less. */
    upToLeast(sizes) {
        const value = least(...sizes.map((size) => upTo(this.value, size.value)));
        return new _a(value, this.kind, 'step', [this, ...sizes]);
    }
    /** Rounded to money that can be paid. */
    inCoins(coin) {
        const nearest = nearestTo(this.value, coin);
        return new _a(nearest, 'money', 'coin', [this, new _a(coin, 'money')]);
    }
    /** On a mark of the ruler. */
    onMark(mark) {
        return this.#with('mark', toMark(this.value, mark.value), mark);
    }
    /** The same number, which now shows its value and not its formula. */
    asResult() {
        return new _a(this.value, this.kind, 'result', [this]);
    }
    /** The same number as the value of a row. */
    inRow(row, entry = 0) {
        return new _a(this.value, this.kind, 'row', [], row, entry);
    }
    /** Adds the rows it was reckoned from. */
    rowsInto(rows) {
        if (this.operation === 'row')
            rows.add(this.row);
        for (const part of this.parts)
            part.rowsInto(rows);
    }
    #with(operation, value, other) {
        return new _a(value, this.kind, operation, other ? [this, other] : [this]);
    }
}
_a = Quantity;
/** The text of an input that is not a number, for a sentence. */
class Stated extends Branded {
    get brand() {
        return 'stated';
    }
    constructor(row, text) {
        super();
        this.row = row;
        this.text = text;
    }
}
/** A length in inches. */
const inches = (value) => new Quantity(isExact(value) ? value : exact(value), 'length');
/** A count. */
const count = (value) => new Quantity(exact(value), 'count');
const ONE_WHOLE = new Quantity(exact(1), 'number');
/** The sum of all, or a length of 0 if there are none. */
const total = (quantities) => {
    const [first, ...more] = quantities;
    return first ? more.reduce((all, one) => all.plus(one), first) : inches(ZERO);
};

export { ONE_WHOLE, Quantity, Stated, count, inches, total };
