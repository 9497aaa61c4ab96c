import { exact, isExact } from '../measure/exact.js';
import { Message, sayings } from '../measure/message.js';
import { toCoin } from '../measure/shop.js';
import { unitsOr, writesComma, numbersIn } from '../measure/units.js';
import { currencyIn, isIn } from './currency.js';
import { textOf, isBlank, say as say$1, readField, missing, initialOf, standing } from './field.js';
import { lengthField } from './lengths.js';
import { Money } from './purchase.js';
import { Quantity, Stated } from './quantity.js';
import { refuse, unlessRefused } from './refusal.js';
import { ReckonedRow } from './row.js';

const say = sayings();
const KINDS = { length: 'length', percent: 'percent', count: 'count', money: 'money' };
/**
 * The ledger a calculator writes its working into: it reads the inputs, keeps the rows in order, and gives every number back
 * with the row it stands in, so that what is reckoned with it knows where it came from. `F` are its inputs, `R` the ids of
 * its other rows.
 */
class Ledger {
    constructor(fields, given) {
        this.fields = fields;
        this.issues = [];
        this.rows = [];
        this.notes = [];
        const input = given ?? {};
        this.input = input;
        this.lang = textOf(input.lang) || 'en';
        const bare = unitsOr(input.units, 'in');
        this.style = { units: unitsOr(input.shown, bare), comma: writesComma(this.lang), bare };
        if (!isBlank(input.units) && input.units !== bare)
            this.issues.push({ input: 'units', ...say$1('notUnits') });
        const values = {};
        const inputs = {};
        for (const key of Object.keys(fields))
            this.#collect(() => (values[key] = readField(fields[key], input[key], this.style, key)), key);
        this.values = values;
        for (const key of Object.keys(fields))
            inputs[key] = this.#quantity(key, values[key]);
        this.inputs = inputs;
        this.currency = textOf(values['currency']) || undefined;
        for (const key of Object.keys(fields))
            if (fields[key].kind === 'money')
                this.#collect(() => {
                    this.adopt(input[key]);
                    this.sameCurrency(input[key]);
                }, key);
    }
    #quantity(key, value) {
        const { kind } = this.fields[key];
        if (!(kind in KINDS))
            return undefined;
        const number = typeof value === 'number' ? exact(value) : value;
        return isExact(number)
            ? new Quantity(number, KINDS[kind], 'row', [], key)
            : undefined;
    }
    /** An entry of an input that holds several lengths, as its row. */
    entry(key, at, value) {
        return new Quantity(value, 'length', 'row', [], key, at);
    }
    /** Where no currency is given, the first that one of these prices names holds. */
    adopt(...prices) {
        for (const price of prices)
            this.currency ??= currencyIn(textOf(price), this.lang);
    }
    /** Refuses a price that names another currency. */
    sameCurrency(price) {
        const { currency } = this;
        const text = textOf(price);
        if (!currency || isIn(text, currency, this.lang))
            return;
        const named = currencyIn(text, this.lang) ?? '';
        refuse(say$1('otherCurrency', { text: text.trim(), named, here: currency.toUpperCase() }));
    }
    /** Does this; what is refused in it is kept as an issue, of that input where the refusal names none. */
    #collect(work, input = '') {
        unlessRefused(work, (refusal) => this.issue(refusal.problem, refusal.input || input));
    }
    issue({ code, values }, input) {
        this.issues.push({ input, code, values });
    }
    /** Says that the inputs cannot go together. */
    refuse(input, problem) {
        return refuse(problem, input);
    }
    /** Says of what is refused in here which input is to blame, and of what. */
    blame(input, work, of = (problem) => problem) {
        return unlessRefused(work, ({ problem }) => refuse(of(problem), input));
    }
    /** Says which of these are missing: inputs that are optional only beside another. */
    require(...keys) {
        for (const key of keys)
            if (isBlank(this.input[key]))
                this.issue(missing(this.fields[key], this.style, key), key);
    }
    /** An input that is optional only beside another, and has to be here: its row. */
    needed(key) {
        return this.inputs[key] ?? refuse(missing(this.fields[key], this.style, key), key);
    }
    note(message) {
        this.notes.push(message);
    }
    /** Adds the rows of these inputs, or of all that have none yet. */
    given(...keys) {
        for (const key of keys.length ? keys : Object.keys(this.fields))
            if (!this.rows.some(({ id }) => id === key))
                this.rows.push(this.#givenRow(key));
    }
    #givenRow(key) {
        const field = this.fields[key];
        const values = this.values;
        return {
            role: 'given',
            id: key,
            // A price may have named it.
            value: key === 'currency' ? this.currency : values[key],
            written: this.input[key] ?? initialOf(field, this.style),
        };
    }
    /** What stands in an input's row, for a sentence. */
    stated(key) {
        const { value, written } = this.#givenRow(key);
        return new Stated(key, standing(this.fields[key], value, written, this.style));
    }
    /**
     * Adds a reckoned row and gives its number back as the row it stands in. Its own formula is how it was got, unless `how`
     * says more.
     */
    row(id, value, { how = value instanceof Quantity ? value : NOTHING, label, from = [], formula } = {}) {
        this.rows.push(new ReckonedRow(id, value, how, label, from, formula));
        return (value instanceof Quantity ? value.inRow(id) : value);
    }
    /** Adds a reckoned row that a person can measure and type over; gives back what holds from here on. */
    measurable(id, reckoned, { how = reckoned, label, from = [] } = {}) {
        const row = new ReckonedRow(id, reckoned, how, label, from);
        row.role = 'measurable';
        this.rows.push(row);
        const raw = this.input.measured?.[id];
        if (isBlank(raw))
            return reckoned.inRow(id);
        const what = label ?? id;
        const value = this.blame(id, () => lengthField().read(raw, this.style, what));
        row.role = 'measured';
        row.reckoned = reckoned;
        row.value = new Quantity(value, 'length');
        // It may have been measured before something else changed.
        if (value.lt(reckoned.value.mul(NEARLY)))
            this.note(say('measuredLess', { what, measured: value, reckoned: reckoned.value }));
        return row.value.inRow(id);
    }
    #coin;
    /** How many decimals the currency has; a bare price has cents. */
    get #decimals() {
        const { currency } = this;
        return (this.#coin ??= currency
            ? (numbersIn('en', { style: 'currency', currency }).resolvedOptions().maximumFractionDigits ?? 2)
            : 2);
    }
    /** The smallest coin. */
    get coin() {
        return exact(1, 10 ** this.#decimals);
    }
    /** So much money as can be paid: to the cent, the yen, the fils. */
    paid(value) {
        return this.priced(toCoin(value, this.#decimals));
    }
    /** A price, which may be finer than a coin. */
    priced(value) {
        return new Money(value, this.currency, this.#decimals);
    }
    /** Runs a calculator's own part and completes its result, or gives back what was wrong. */
    finish(work) {
        let own;
        if (!this.issues.length)
            this.#collect(() => (own = work()));
        const { issues, notes, cost, style, lang } = this;
        const rows = own ? this.rows : Object.keys(this.fields).map((key) => this.#givenRow(key));
        const values = this.values;
        const price = isExact(values['price']) ? this.priced(values['price']) : undefined;
        return { issues, own, rows, notes, cost, price, style, lang };
    }
}
/** Measured at less than this of what is reckoned, it may be a slip. */
const NEARLY = exact(19, 20);
const NOTHING = new Message('', {});

export { Ledger };
