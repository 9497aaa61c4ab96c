import { Branded } from '../measure/brand.js';
import { exact, sum } from '../measure/exact.js';
import { decimal } from '../measure/format.js';
import { isMessage, Message } from '../measure/message.js';
import { toStep } from '../measure/shop.js';
import { toUnit } from '../measure/units.js';

/** An amount to buy, already rounded up to a step the shop cuts. */
class Purchase extends Branded {
    get brand() {
        return 'purchase';
    }
    constructor(inches, 
    /** In its unit. */
    amount, unit, 
    /** Its name, if the amount and the unit are not enough. */
    called) {
        super();
        this.inches = inches;
        this.amount = amount;
        this.unit = unit;
        this.called = called;
    }
}
/** Cloth of this length, which is a step of the shop already. */
const ofCloth = (inches, { unit }) => new Purchase(inches, toUnit(inches, unit), unit);
/** Enough cloth for this length. */
const enoughFor = (need, step) => ofCloth(toStep(need, step), step);
/** Several lengths bought together, as one amount. */
const allOf = (purchases, step) => ofCloth(sum(purchases.map(({ inches }) => inches)), step);
/** Whether a name says how many there are, such as `5 fat quarters`. It then has a `count`, itself or in a message inside it. */
const isCounted = ({ values }) => Object.entries(values).some(([key, value]) => key === 'count' || (isMessage(value) && isCounted(value)));
/** The same name for a multiple of it. */
const timesMore = ({ code, values }, times) => {
    const more = {};
    for (const [key, value] of Object.entries(values)) {
        if (key === 'count' && typeof value === 'number')
            more[key] = value * times;
        else
            more[key] = isMessage(value) ? timesMore(value, times) : value;
    }
    return new Message(code, more);
};
/** A multiple of something that is bought by the piece. Undefined if its name has no `count`. */
const manyOf = ({ inches, amount, unit, called }, times) => called && isCounted(called)
    ? new Purchase(inches.mul(times), amount.mul(times), unit, timesMore(called, times))
    : undefined;
/** An amount of money as it is paid, or a price. */
class Money extends Branded {
    get brand() {
        return 'money';
    }
    constructor(value, 
    /** ISO 4217. If it is undefined, money is a number alone. */
    currency, 
    /** How many decimals the currency has. */
    decimals) {
        super();
        this.value = value;
        this.currency = currency;
        this.decimals = decimals;
    }
    /** Its value as a decimal number: `12.50`. A price with parts of a coin keeps all its decimals. */
    get isWholeCoins() {
        return exact(this.value.valueOf().toFixed(this.decimals)).equals(this.value);
    }
    /** The same as plain data: `"12.50"`. */
    get amount() {
        return this.isWholeCoins ? this.value.valueOf().toFixed(this.decimals) : decimal(this.value, 6);
    }
}
/** One line of a cut list: equal pieces, in sizes on the ruler's marks. */
class Cut extends Branded {
    get brand() {
        return 'cut';
    }
    constructor(count, piece, width, length) {
        super();
        this.count = count;
        this.piece = piece;
        this.width = width;
        this.length = length;
    }
}

export { Cut, Money, Purchase, allOf, enoughFor, manyOf, ofCloth };
