import { ownLength } from '../ledger/lengths.js';
import { Entry } from '../ledger/listing.js';
import { Purchase, Money } from '../ledger/purchase.js';
import '../ledger/quantity.js';
import { exact, isExact, upTo } from '../measure/exact.js';
import { length, ownUnits, number, mixed, decimal, asTyped } from '../measure/format.js';
import { Message } from '../measure/message.js';
import { moneyIn } from '../measure/money.js';
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
/** Metres are shown to this part of a metre, which is less than anybody can cut. */
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
    /** The usual length, or an example, in the reader's units: `40 in`, `105 cm`. */
    usual(texts) {
        return length(ownLength(texts[this.style.units]), this.style);
    }
    /** An example that differs with the reader's units. */
    forUnits(texts) {
        return texts[this.style.units];
    }
    /** The few words beside an input. */
    hint(id) {
        return this.#inUnits(this.words.hints[id] ?? '');
    }
    #inUnits(hint) {
        return typeof hint === 'string' ? hint : hint[ownUnits(this.style)];
    }
    /** A length as a number in the reader's units, without the unit. Any other quantity as it is written. */
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
    /** A length with its unit. Any other quantity as it is written. */
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
    /** The same with its value, unless the formula is only a number: `2 × 40 − 2 × 1/2 = 79`. */
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
    /** The name of an entry of a list. */
    entry(of, number) {
        return this.words.entries[of]?.(number) ?? this.label(of);
    }
    /** The same in short, for the button that takes it away. */
    entryName(of, number) {
        return this.words.entryNames[of]?.(number) ?? this.entry(of, number);
    }
    /** The text that somebody typed, in a sentence. */
    quote(text) {
        return this.sentence('quoted', { text: text.replace(/^(.{24}).+/su, '$1…') });
    }
    /** A number of things, in the right plural form: `2 joins`. */
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
    /** The unit of an amount, without the number: `yd`, `fat quarters`. */
    unitOf({ called, unit }) {
        return called ? new UnitTeller(this.words, this.style, this.lang).say(called) : unit;
    }
    /** What is bought. */
    bought({ called, amount, unit }) {
        return called ? this.say(called) : `${this.shopAmount(amount, unit, this.style.comma)} ${unit}`;
    }
    /** An amount in the shop's unit. Metres with endless decimals are rounded up, so that the text never says less than the need. */
    shopAmount(amount, unit, comma = false) {
        return unit === 'm' ? decimal(upTo(amount, FINEST_METRE), 4, comma) : mixed(amount);
    }
    money({ value, currency }) {
        return this.amount(value, currency);
    }
    amount(value, currency) {
        return moneyIn(this.lang, value.valueOf(), currency);
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
        if (cell instanceof Entry)
            return cell.text;
        return isExact(cell) ? this.l(cell) : this.value(cell);
    }
    /** Words or a length in a drawing. */
    caption(caption) {
        return isExact(caption) ? this.l(caption) : this.say(caption);
    }
    /** A choice of an input in words; the choice itself if it has none. */
    chosen(of, code) {
        const words = typeof of === 'string' ? this.words.options[of] : undefined;
        // What somebody wrote may be the name of something that every object has.
        return this.#inUnits((words && Object.hasOwn(words, code) ? words[code] : undefined) ?? code);
    }
    /** The text in an input's row: in words, where its author writes codes. */
    standing(id, { kind, options, offered }, text) {
        if (kind === 'flag')
            return this.sentence(text, {});
        return options || offered
            ? text
                .split(', ')
                .map((code) => this.chosen(id, code))
                .join(', ')
            : text;
    }
    /** The text of an input, in a sentence. */
    stated({ text }) {
        return text;
    }
    /** A length as the reader would type it. */
    typed(value) {
        return asTyped(value, this.style);
    }
}
/** A name without its number: `fat quarters`. */
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
/** `58 + 2 × 4 = 66 in`. A rounded value has its own sign in place of the equals sign. */
const equals = (formula, value) => value.startsWith('≈') ? `${formula} ≈ ${value.slice(1)}` : `${formula} = ${value}`;

export { Teller, equals };
