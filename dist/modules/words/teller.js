import { ownLength } from '../ledger/lengths.js';
import { Purchase, Money } from '../ledger/purchase.js';
import '../ledger/quantity.js';
import { exact, isExact, upTo } from '../measure/exact.js';
import { length, number, mixed, decimal, asTyped } from '../measure/format.js';
import { Message } from '../measure/message.js';
import { numbersIn } from '../measure/units.js';
import { formulaOf } from './formula.js';

const exactOf = (value) => (isExact(value) ? value : value.value);
/** Plural rules by language: a browser takes long to find them. */
const rules = new Map();
const rulesOf = (lang) => {
    let found = rules.get(lang);
    if (!found)
        rules.set(lang, (found = new Intl.PluralRules(lang)));
    return found;
};
/** A metre's end that is shown: less than a cut can be. */
const FINEST_METRE = exact(1, 10_000);
/** Makes sentences of messages, in one language, with lengths in the reader's units. */
class Teller {
    constructor(words, style, 
    /** The page's language, which decides how money is written. */
    lang) {
        this.words = words;
        this.style = style;
        this.lang = lang;
    }
    /** What is usual where people measure as the reader does, or an example in her units: `40 in`, `105 cm`. */
    usual(texts) {
        return length(ownLength(texts[this.style.units]), this.style);
    }
    /** The few words beside an input. */
    hint(id) {
        const hint = this.words.hints[id] ?? '';
        return typeof hint === 'string' ? hint : hint[this.style.units];
    }
    /** A length as a bare number in the reader's units; any other quantity as it is written. */
    n(value) {
        if (isExact(value))
            return number(value, this.style);
        const { kind } = value;
        if (kind === 'length')
            return number(value.value, this.style);
        if (kind === 'percent')
            return `${mixed(value.value.mul(100))} %`;
        return kind === 'money' ? this.amount(value.value, undefined) : mixed(value.value);
    }
    /** A length with its unit; any other quantity as it is written. */
    l(value) {
        return isExact(value) || value.kind === 'length' ? length(exactOf(value), this.style) : this.n(value);
    }
    /** `12 × 14 in`, both sides in the reader's units. */
    size({ width, length }) {
        return `${this.n(width)} × ${this.l(length)}`;
    }
    /** A formula with its numbers filled in. */
    formula(quantity) {
        return formulaOf(quantity, this);
    }
    /** The same and what it comes to, where it is more than a number: `2 × 40 − 2 × 1/2 = 79`. */
    reckoned(quantity) {
        const number = this.n(quantity);
        const formula = this.formula(quantity);
        return formula === number ? number : equals(formula, number);
    }
    /** The same with a unit: `2 × 40 − 2 × 1/2 = 79 in`. */
    reckonedLength(quantity) {
        return equals(this.formula(quantity), this.l(quantity));
    }
    /** A formula that is rounded up: to whole steps, or to a mark of the ruler. */
    rounded(how, formula, step) {
        return this.sentence(how === 'mark' ? 'roundedToMark' : 'roundedUp', { formula, step });
    }
    /** A sentence from its message. */
    say({ code, values }) {
        return this.sentence(code, values);
    }
    sentence(code, values) {
        const sentence = this.words.sentences[code] ?? '';
        return typeof sentence === 'string' ? sentence : sentence(values, this);
    }
    label(what) {
        return typeof what === 'string' ? (this.words.labels[what] ?? what) : this.say(what);
    }
    /** What an entry of a list is called. */
    entry(of, number) {
        return this.words.entries[of]?.(number) ?? this.label(of);
    }
    /** The same in short, where it is to be taken away. */
    entryName(of, number) {
        return this.words.entryNames[of]?.(number) ?? this.entry(of, number);
    }
    /** Somebody's text inside a sentence. */
    quote(text) {
        return this.sentence('quoted', { text: text.replace(/^(.{24}).+/su, '$1…') });
    }
    /** So many of something, in its plural form: `2 joins`. */
    many(count, forms) {
        return `${count} ${this.form(count, forms)}`;
    }
    form(count, forms) {
        return forms[rulesOf(this.words.lang).select(count)] ?? forms.other;
    }
    /** The same in the words of another calculator: a worksheet says what its parts say. */
    as(calculator) {
        const words = this.words.others?.[calculator];
        return words ? new Teller(words, this.style, this.lang) : this;
    }
    /** What an amount is counted in, without the number: `yd`, `fat quarters`. */
    unitOf({ called, unit }) {
        return called ? new UnitTeller(this.words, this.style, this.lang).say(called) : unit;
    }
    /** What is bought. */
    bought({ called, amount, unit }) {
        return called ? this.say(called) : `${this.shopAmount(amount, unit, this.style.comma)} ${unit}`;
    }
    /** An amount in the shop's unit. Metres are rounded up where they have no end: less than the need is never written. */
    shopAmount(amount, unit, comma = false) {
        return unit === 'm' ? decimal(upTo(amount, FINEST_METRE), 4, comma) : mixed(amount);
    }
    money({ value, currency }) {
        return this.amount(value, currency);
    }
    amount(value, currency) {
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
    /** What a row holds. */
    value(value) {
        if (value instanceof Purchase)
            return this.bought(value);
        if (value instanceof Money)
            return this.money(value);
        return value instanceof Message ? this.say(value) : this.l(value);
    }
    /** A cell of a list. */
    cell(cell) {
        if (cell === undefined)
            return '';
        if (typeof cell !== 'object')
            return `${cell}`;
        return isExact(cell) ? this.l(cell) : this.value(cell);
    }
    /** Words or a length in a drawing. */
    caption(caption) {
        return isExact(caption) ? this.l(caption) : this.say(caption);
    }
    /** What stands in an input's row, in a sentence. */
    stated({ text }) {
        return text;
    }
    /** A length as its reader would type it again. */
    typed(value) {
        return asTyped(value, this.style);
    }
}
/** Says what is counted without its number. */
class UnitTeller extends Teller {
    many(count, forms) {
        return this.form(count, forms);
    }
    bought(purchase) {
        return this.unitOf(purchase);
    }
    as(calculator) {
        return new UnitTeller(super.as(calculator).words, this.style, this.lang);
    }
}
/** `58 + 2 × 4 = 66 in`; what is not exact says so itself. */
const equals = (formula, value) => value.startsWith('≈') ? `${formula} ≈ ${value.slice(1)}` : `${formula} = ${value}`;

export { Teller, equals };
