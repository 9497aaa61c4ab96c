import { exact, isExact } from '../measure/exact.js';
import { Message, sayings } from '../measure/message.js';
import { decimalsOfCurrency } from '../measure/money.js';
import { toCoin } from '../measure/shop.js';
import { unitsOr, writesComma } from '../measure/units.js';
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
 * A calculator writes its working into a ledger. The ledger reads the inputs and keeps the rows in order. It gives each number back
 * together with its row, so that the next sum knows where the number came from. `F` are the inputs, `R` the ids of the other
 * rows.
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
        const all = Object.entries(fields);
        for (const [key, field] of all)
            this.#collect(() => (values[key] = readField(field, input[key], this.style, key)), key);
        this.values = values;
        for (const [key, { kind }] of all)
            inputs[key] = this.#quantity(key, kind, values[key]);
        this.inputs = inputs;
        this.currency = textOf(values['currency']) || undefined;
        for (const [key, { kind }] of all)
            if (kind === 'money')
                this.#collect(() => {
                    this.adopt(input[key]);
                    this.sameCurrency(input[key]);
                }, key);
    }
    #quantity(key, kind, value) {
        if (!(kind in KINDS))
            return undefined;
        const number = typeof value === 'number' ? exact(value) : value;
        return isExact(number)
            ? new Quantity(number, KINDS[kind], 'row', [], key)
            : undefined;
    }
    /** One entry of an input that holds several lengths. */
    entry(key, at, value) {
        return new Quantity(value, 'length', 'row', [], key, at);
    }
    /** If no currency is given, takes the first one that these prices name. */
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
    /** Runs this. Keeps a refusal as an issue, of this input if the refusal names none. */
    #collect(work, input = '') {
        unlessRefused(work, (refusal) => this.issue(refusal.problem, refusal.input || input));
    }
    issue({ code, values }, input) {
        this.issues.push({ input, code, values });
    }
    /** Refuses inputs that do not go together. */
    refuse(input, problem) {
        return refuse(problem, input);
    }
    /** Runs this. If it is refused, says which input causes it, and for which piece. */
    blame(input, work, of = (problem) => problem) {
        return unlessRefused(work, ({ problem }) => refuse(of(problem), input));
    }
    /** Says which of these are missing. They are optional only if another input is given. */
    require(...keys) {
        for (const key of keys)
            if (isBlank(this.input[key]))
                this.issue(missing(fieldOf(this.fields, key), this.style, key), key);
    }
    /** The row of an input that is optional only if another is given, and that is needed here. */
    needed(key) {
        return this.inputs[key] ?? refuse(missing(fieldOf(this.fields, key), this.style, key), key);
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
        const field = fieldOf(this.fields, key);
        const values = this.values;
        return {
            role: 'given',
            id: key,
            // A price may have named the currency.
            value: key === 'currency' ? this.currency : values[key],
            written: this.input[key] ?? initialOf(field, this.style),
        };
    }
    /** The text in an input's row, for a sentence. */
    stated(key) {
        const { value, written } = this.#givenRow(key);
        return new Stated(key, standing(fieldOf(this.fields, key), value, written, this.style));
    }
    /**
     * Adds a reckoned row, and gives its number back as that row. The formula of the number says how it was got, unless `how` says
     * more.
     */
    row(id, value, { how = value instanceof Quantity ? value : NOTHING, label, from = [], formula } = {}) {
        this.rows.push(new ReckonedRow(id, value, how, label, from, formula));
        return (value instanceof Quantity ? value.inRow(id) : value);
    }
    /** Adds a reckoned row that a reader can measure and type over. Gives back the number to go on with. */
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
        // The reader may have measured it before something else changed.
        if (value.lt(reckoned.value.mul(NEARLY)))
            this.note(say('measuredLess', { what, measured: value, reckoned: reckoned.value }));
        return row.value.inRow(id);
    }
    #coin;
    /** How many decimals the currency has. A price without a currency has cents. */
    get #decimals() {
        const { currency } = this;
        return (this.#coin ??= currency ? decimalsOfCurrency(currency) : 2);
    }
    /** The smallest coin. */
    get coin() {
        return exact(1, 10 ** this.#decimals);
    }
    /** Money that can be paid: rounded to the cent, the yen, the fils. */
    paid(value) {
        return this.priced(toCoin(value, this.#decimals));
    }
    /** A price, which may be finer than a coin. */
    priced(value) {
        return new Money(value, this.currency, this.#decimals);
    }
    /** Runs the calculator's own part and completes its result, or gives back what is wrong. */
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
/** If a measure is less than this share of the reckoned value, it may be a mistake. */
const NEARLY = exact(19, 20);
const NOTHING = new Message('', {});
/** An input of these. The type of its name says that it is there. */
const fieldOf = (fields, key) => fields[key];

export { Ledger };
