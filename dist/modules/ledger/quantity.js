import { Branded } from '../measure/brand.js';
import { exact, rootUp, upTo, least, nearestTo, toMark, isExact, ZERO } from '../measure/exact.js';

var _a;
/** Roots are not exact: these are never short. */
const rootOfTwoTimes = (side) => rootUp(side.mul(side).mul(2));
/**
 * A number that knows how it was got: its exact value, and the operation and the quantities that it was reckoned with. It is
 * reckoned once, by the same call that writes its formula down, so that a number and its working cannot differ.
 */
class Quantity extends Branded {
    get brand() {
        return 'quantity';
    }
    constructor(value, kind, operation = 'number', parts = [], 
    /** Of a `row`: its id, and which entry, where the row holds a list. */
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
    /** So many of it, `2 × 4`, or a part of it, `40 × (1 − 3 %)`. */
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
    /** What is left of it after so many percent are lost: `× (1 − 3 %)`. */
    lessPercent(percent) {
        return this.times(ONE_WHOLE.minus(percent));
    }
    /** What so many percent are lost of, where this is what is left: `÷ (1 − 3 %)`. */
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
    /** Rounded up to what a shop cuts: whole steps of one of these sizes, whichever is less. */
    upToLeast(sizes) {
        const value = least(...sizes.map((size) => upTo(this.value, size.value)));
        return new _a(value, this.kind, 'step', [this, ...sizes]);
    }
    /** So much money as can be paid. */
    inCoins(coin) {
        const nearest = nearestTo(this.value, coin);
        return new _a(nearest, 'money', 'coin', [this, new _a(coin, 'money')]);
    }
    /** On a mark of the ruler. */
    onMark(mark) {
        return this.#with('mark', toMark(this.value, mark.value), mark);
    }
    /** The same number, shown as a number and not by its formula. */
    asResult() {
        return new _a(this.value, this.kind, 'result', [this]);
    }
    /** The same number as a row of the sheet holds it. */
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
/** An input that is no number, as a sentence shows it: what stands in its row. */
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
/** A length of so many inches. */
const inches = (value) => new Quantity(isExact(value) ? value : exact(value), 'length');
/** So many of something. */
const count = (value) => new Quantity(exact(value), 'count');
const ONE_WHOLE = new Quantity(exact(1), 'number');
/** All of them added; nothing, as a length, where there are none. */
const total = (quantities) => {
    const [first, ...more] = quantities;
    return first ? more.reduce((all, one) => all.plus(one), first) : inches(ZERO);
};

export { ONE_WHOLE, Quantity, Stated, count, inches, total };
