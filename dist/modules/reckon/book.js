import { exact, isExact, ONE, toMark, most, downTo } from '../measure/exact.js';
import { number, length, mixed, asTyped, decimal } from '../measure/format.js';
import { quoted } from '../measure/parse.js';
import { toCoin, purchase, toStep, stepAbove, toPriced } from '../measure/shop.js';
import { writesComma, unitsOr, toUnit, numbersIn } from '../measure/units.js';
import { BOLT_WIDTHS } from '../trade/cloths.js';
import { textOf, isBlank, readField, refuse, unlessRefused, missing, initialOf, lengthField } from './fields.js';
import { currencyIn, isIn } from './money.js';

/** A person's own words, so that a row's `how` takes no sign in them for one of its own. */
const asWords = (text) => text.replace(/[{=]/g, '{$&');
/** Less than this to spare calls for a warning. Common practice, no source. */
const SMALL_SPARE = exact(1);
/** Plain data: every exact number as a mixed number, and nothing undefined. */
const plain = (value) => {
    if (typeof value !== 'object' || !value)
        return value;
    if (isExact(value))
        return mixed(value);
    if (Array.isArray(value))
        return value.map(plain);
    const written = {};
    for (const [key, part] of Object.entries(value))
        if (part !== undefined)
            written[key] = plain(part);
    return written;
};
/**
 * The book a calculator writes its working into: it reads the inputs, keeps the rows in order, and fills in the numbers
 * the way the reader writes them.
 */
class Book {
    constructor(fields, given) {
        this.fields = fields;
        this.errors = [];
        this.rows = [];
        this.notes = [];
        /** A length as a bare number in the reader's units. */
        this.n = (value) => number(value, this.style);
        /** A length with its unit. */
        this.l = (value) => length(value, this.style);
        /** `12 × 14 in`, both sides in the reader's units. */
        this.size = (width, height) => `${this.n(width)} × ${this.l(height)}`;
        this.#find = (id) => this.rows.find((row) => row.id === id);
        /** So much money as can be paid: to the cent, the yen, the fils. */
        this.paid = (value) => toCoin(value, this.#decimals);
        const input = given ?? {};
        this.input = input;
        const { units, shown } = input;
        this.lang = textOf(input.lang) || 'en';
        const bare = unitsOr(units, 'in');
        this.style = { units: unitsOr(shown, bare), comma: writesComma(this.lang), bare };
        if (!isBlank(units) && units !== bare)
            this.errors.push({
                input: 'units',
                message: 'The units can be in or cm. Write units="in" or units="cm".',
            });
        const values = {};
        for (const key in fields)
            this.#collect(() => (values[key] = readField(fields[key], input[key], this.style)), key);
        this.values = values;
        for (const key in fields)
            if (fields[key].kind === 'money')
                this.#collect(() => {
                    this.adopt(input[key]);
                    this.sameCurrency(input[key]);
                }, key);
    }
    /** Where no currency is given, the first that one of these prices names holds. */
    adopt(...prices) {
        for (const price of prices)
            this.#shop.currency ??= currencyIn(textOf(price), this.lang);
    }
    /** Refuses a price that names another currency. */
    sameCurrency(price) {
        const { currency } = this.#shop;
        const text = textOf(price);
        if (!currency || isIn(text, currency, this.lang))
            return;
        const here = currency.toUpperCase();
        refuse(`${quoted(text.trim())} is in ${currencyIn(text, this.lang)}, but the currency here is ${here}. Write it in ${here}, like 12.50.`);
    }
    /** Does this; what is refused in it is kept as an error, of that input where the refusal names none. */
    #collect(work, input = '') {
        unlessRefused(work, ({ input: named, message }) => this.errors.push({ input: named || input, message }));
    }
    /** The inputs that most calculators have. */
    get #shop() {
        return this.values;
    }
    /** Says that the inputs cannot go together. */
    refuse(input, message) {
        return refuse(message, input);
    }
    /** Says of what is refused in here which input is to blame, and of what: `The width of fabric A: `. */
    blame(input, work, of = '') {
        return unlessRefused(work, ({ message }) => refuse(of + message, input));
    }
    /** Says which of these are missing: inputs that are optional only beside another. */
    require(...keys) {
        for (const key of keys)
            if (isBlank(this.input[key]))
                this.errors.push({ input: key, message: missing(this.fields[key], this.style) });
    }
    /** Adds the rows of these inputs, or of all that have none yet. */
    given(...keys) {
        for (const key of keys.length ? keys : Object.keys(this.fields))
            if (!this.#find(key))
                this.rows.push(this.#givenRow(key));
    }
    #find;
    #givenRow(key) {
        const { style } = this;
        const field = this.fields[key];
        const value = this.values[key];
        const row = {
            id: key,
            label: field.label,
            value: '',
            how: field.hint ?? '',
            from: [],
            role: 'given',
            more: field.more,
        };
        const raw = this.input[key] ?? initialOf(field, style);
        row.value = value !== undefined && field.write ? field.write(value, style, raw) : textOf(raw);
        // Bare numbers stay the author's where the reader sees others.
        if (value !== undefined && style.bare !== style.units)
            row.value = field.marked?.(row.value, style.bare) ?? row.value;
        if (field.kind === 'length' && value) {
            row.inches = mixed(value);
            if (!row.value.endsWith(style.units))
                row.how = this.l(value);
        }
        return row;
    }
    /**
     * Adds a reckoned row. In `how`, `{width}` stands for that row's number, `{width unit}` for the number with its unit,
     * `{borders 0}` for the first number of a list, and an `=` before a comma or at the end for the row's own value; the rows
     * so named are what it was reckoned from, with any in `from`. A person's own words go in by {@link asWords}.
     */
    row(id, label, value, how, from = []) {
        const row = {
            id,
            label,
            value: `${value}`,
            how: '',
            from: [...new Set(from)],
            role: 'reckoned',
        };
        if (isExact(value)) {
            row.value = this.l(value);
            row.inches = mixed(value);
        }
        row.how = how
            .replace(/\{([{=])|\{(\w+) ?(\w*)\}|=(?=,|$)/g, (_, own, named, which) => {
            if (own)
                return own;
            if (!named)
                return `= ${row.value}`;
            const { value, inches } = this.#find(named);
            if (!row.from.includes(named))
                row.from.push(named);
            if (which && which !== 'unit')
                return this.n(this.values[named][+which]);
            return inches && !which ? this.n(exact(inches)) : value;
        })
            .replaceAll('= ≈', '≈ ');
        this.rows.push(row);
        return row;
    }
    /** Adds a reckoned row that a person can measure and type over; gives back what holds from here on. */
    measurable(id, label, reckoned, how, from) {
        const row = this.row(id, label, reckoned, how, from);
        row.role = 'measurable';
        const raw = this.input.measured?.[id];
        if (isBlank(raw))
            return reckoned;
        const value = this.blame(id, () => readField(lengthField(label), raw, this.style));
        Object.assign(row, {
            role: 'measured',
            value: asTyped(value, this.style),
            inches: mixed(value),
            reckoned: row.value,
        });
        // It may have been measured before something else changed.
        if (value.lt(reckoned.mul(exact(19, 20))))
            this.notes.push(`${label}: ${this.l(value)} was measured where ${this.l(reckoned)} is reckoned. Is it still right?`);
        return value;
    }
    /**
     * Adds the cloth's usable width, and its width once washed where it shrinks. Gives back the width that holds, how a row
     * names it, what a wash leaves of any length, and how a row takes that into account.
     */
    cloth() {
        const { fabricWidth, shrinkage } = this.#shop;
        const kept = ONE.sub(shrinkage);
        this.given('fabricWidth');
        this.cautionOfSelvages(fabricWidth);
        if (kept.equals(1))
            return { cloth: fabricWidth, clothRow: '{fabricWidth}', kept, washed: '' };
        this.given('shrinkage');
        this.notes.push('Wash the cloth before you cut it: cut sizes are of washed cloth.');
        const how = '{fabricWidth} × (1 − {shrinkage}) =';
        const cloth = this.measurable('washedWidth', 'Width once washed', fabricWidth.mul(kept), how);
        if (cloth.gt(fabricWidth))
            refuse(`Washed cloth is no wider than it was: ${this.l(fabricWidth)}. Measure it again, or put it back.`, 'washedWidth');
        return { cloth, clothRow: '{washedWidth}', kept, washed: ' ÷ (1 − {shrinkage})' };
    }
    /** Says so where a width is one that cloth is sold as, selvages and all. */
    cautionOfSelvages(width) {
        const [, , usable] = BOLT_WIDTHS.find(([from, to]) => width.gte(from) && width.lte(to)) ?? [];
        if (usable)
            this.notes.push(`Cloth sold as ${this.l(width)} wide is usually ${this.l(exact(usable))} without its selvages. Measure yours and write what is usable.`);
    }
    /** How strips are joined, in a row: `7 × {cloth} − 6 × {loss} = 265`. */
    joined(count, each, losses, reach) {
        return count > 1 ? `${count} × ${each} − ${losses} = ${this.n(reach)}` : each;
    }
    /** What a size is cut to, where it lies between the ruler's marks. */
    onMark(size) {
        const cut = toMark(size, this.values.mark);
        return cut.equals(size) ? '' : `, cut ${this.l(cut)}`;
    }
    /** A line of the cut list. */
    cut(count, piece, width, long) {
        return { count, piece, width: mixed(width), length: mixed(long), text: this.size(width, long) };
    }
    /** What to buy of so much cloth: rounded up to the shop's step. */
    toBuy(fabric) {
        const { increment } = this.#shop;
        return purchase(toStep(fabric, increment), increment, this.style.comma);
    }
    /** The same, with a warning of a small spare: of `Fabric A: `, where there are several. */
    upToStep(fabric, of = '') {
        const buy = this.toBuy(fabric);
        const bought = exact(buy.inches);
        const spare = bought.sub(fabric);
        const next = this.toBuy(stepAbove(bought, this.#shop.increment));
        if (!this.input.shared && fabric.gt(0) && spare.lt(SMALL_SPARE))
            this.notes.push(`${of}${spare.gt(0) ? `Only ${this.l(spare)}` : 'Nothing'} to spare: a crooked cut in the shop or a prewash could leave you short. The next step up is ${next.text}.`);
        return { bought, buy };
    }
    /**
     * Rounds cloth up to the shop's step, with its rows (need, buy, spare, cost), and warns of a small spare. The
     * calculator's fields hold `increment`, `price` and `currency`.
     */
    buy(fabric, how, from, label = 'Cloth needed') {
        this.given('increment');
        const { bought, buy } = this.upToStep(fabric);
        if (this.input.shared)
            this.notes.push('Cloth for it is bought with what else its fabric is for: see the shopping list.');
        const spare = bought.sub(fabric);
        const { increment } = this.#shop;
        const inYards = buy.unit === 'yd' ? ` = ${number(toUnit(fabric, 'yd'), { units: 'in' })} yd` : '';
        const below = most(...increment.sizes.map((size) => downTo(fabric, size)));
        // A rounded amount may fall on a step that is not enough.
        const amount = (this.n(fabric) + inYards).includes('≈') && below.lt(fabric)
            ? `, more than ${purchase(below, increment, this.style.comma).text}`
            : inYards;
        this.row('fabric', label, fabric, how, from);
        this.row('buy', 'Buy', buy.text, `{fabric unit}${amount}, up to a step of {increment}`);
        this.row('spare', 'Spare', spare, `${this.n(bought)} − {fabric} =`, ['buy']);
        this.price(toPriced(bought, this.#shop.increment), buy.text);
        return { buy, fabric, spare };
    }
    /** Adds the cost of so much, where a price was given. */
    price(amount, text, price = this.#shop.price, from = ['buy', 'price']) {
        if (!price)
            return;
        this.cost = this.sum(amount.mul(price));
        this.row('cost', 'Cost', this.cost.text, `${asWords(text)} × ${this.money(price)}`, from);
    }
    #coin;
    /** How many decimals the currency has; a bare price has cents. */
    get #decimals() {
        const { currency } = this.#shop;
        return (this.#coin ??= currency
            ? numbersIn('en', { style: 'currency', currency }).resolvedOptions().maximumFractionDigits
            : 2);
    }
    /** An amount of money as it is paid, or a price as it is: a decimal number, and as people write it. */
    sum(value, paid = this.paid(value)) {
        const amount = paid.valueOf().toFixed(this.#decimals);
        return { amount: exact(amount).equals(paid) ? amount : decimal(paid, 6), text: this.money(paid) };
    }
    money(value) {
        const { currency } = this.#shop;
        try {
            return numbersIn(this.lang, {
                // A price of less than a coin is shown as it is reckoned with.
                maximumFractionDigits: 6,
                ...(currency ? { style: 'currency', currency } : { minimumFractionDigits: 2 }),
            }).format(value.valueOf());
        }
        catch {
            return value.valueOf().toFixed(2);
        }
    }
    /** Runs a calculator's own part and completes its result, or gives back what was wrong. */
    finish(work) {
        let own;
        if (!this.errors.length)
            this.#collect(() => (own = work()));
        if (own)
            return plain({ ...own, cost: this.cost, notes: this.notes, working: this.rows });
        return {
            errors: this.errors,
            working: Object.keys(this.fields).map((key) => plain(this.#givenRow(key))),
        };
    }
}

export { Book, SMALL_SPARE, asWords };
