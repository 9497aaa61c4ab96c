import { isServer } from 'lit';
import { isBlank, isMissing, textOf, say, readField } from '../ledger/field.js';
import { lengthField } from '../ledger/lengths.js';
import { unlessRefused } from '../ledger/refusal.js';
import { upTo, exact } from '../measure/exact.js';
import { decimal } from '../measure/format.js';
import { placesOf } from '../measure/parse.js';
import { unitsOr, writesComma } from '../measure/units.js';
import { sayInFace } from '../words/face-sayings.js';
import { wordsIn } from '../words/languages.js';
import { Teller } from '../words/teller.js';
import { attributeOf } from './calculator.js';
import { FormField } from './form-field.js';
import { followLanguage, leaveLanguage, languageAt } from './language.js';
import { Outcome, goodOf } from './outcome.js';
import { isAsServed } from './server.js';
import { overStock } from './stock.js';

/** A form field whose value is reckoned: the inputs of its calculator, the result, and the last good one. */
class Reckoned extends FormField {
    static { this.properties = {
        units: { reflect: true },
        lock: { reflect: true },
        fabric: { reflect: true },
        shown: { attribute: false },
        max: {},
        measured: { attribute: false },
        flow: { attribute: false },
        words: { attribute: false },
    }; }
    #input;
    #outcome;
    #teller;
    connectedCallback() {
        super.connectedCallback();
        followLanguage(this);
    }
    disconnectedCallback() {
        super.disconnectedCallback();
        leaveLanguage(this);
    }
    /** The reckoned result: plain JSON, lengths as exact inches. With `errors` and no `buy` where an input is wrong. */
    get result() {
        return this.outcome.result;
    }
    /** What the inputs come to as they are now. */
    get outcome() {
        if (!this.hasUpdated)
            settleAround(this);
        const input = this.reckonInput();
        const { calculator, teller } = this;
        const last = this.#outcome;
        if (last && sameInput(input, this.#input)) {
            if (last.t.words === teller.words)
                return last;
            // The same in other words: those of its language have come.
            return this.#keep(new Outcome(last.reckoning, calculator.fields, teller));
        }
        this.#input = input;
        return this.#keep(new Outcome(calculator.reckon(input), calculator.fields, teller));
    }
    #keep(outcome) {
        this.#outcome = outcome;
        this.good = goodOf(outcome) ?? this.goodBefore;
        return outcome;
    }
    /** The answer as it is now; undefined where an input is wrong. */
    get answer() {
        return this.outcome.reckoning.own;
    }
    /** What makes sentences here. */
    get teller() {
        const { calculator, english, lengthStyle } = this;
        const lang = this.#language;
        const words = this.#inOwnWords(wordsIn(lang, calculator.name, english));
        const last = this.#teller;
        if (last?.words === words && last.lang === lang && sameInput(lengthStyle, last.style))
            return last;
        return (this.#teller = new Teller(words, lengthStyle, lang));
    }
    #own;
    /** The same with the author's own words for labels. */
    #inOwnWords(from) {
        const { words } = this;
        if (!words)
            return from;
        if (this.#own?.from !== from || this.#own.words !== words)
            this.#own = { from, words, with: { ...from, labels: { ...from.labels, ...words } } };
        return this.#own.with;
    }
    /** What a wrong input leaves as the last outcome with an answer. */
    get goodBefore() {
        return this.good;
    }
    /** Reckons again though no input changed: what it depends on did. */
    renew() {
        this.#input = undefined;
        // Before it is drawn only a form asks.
        if (this.hasUpdated || this.form)
            this.send();
    }
    /** The same, and shows it. */
    reckonAgain() {
        this.renew();
        this.requestUpdate();
    }
    /** What a form sends: the amount to buy as a decimal number in the shop's unit; empty where an input is wrong. */
    get value() {
        const { answer } = this;
        // Never less than the amount: thirds of a yard have no end.
        return answer ? decimal(upTo(answer.buy.amount, exact(1, 10_000)), 4) : '';
    }
    /** How lengths are shown here. */
    get lengthStyle() {
        const given = this.flow?.values;
        const bare = unitsOr(this.units ?? given?.['units'], 'in');
        const units = unitsOr(this.shown ?? given?.['shown'], bare);
        return { units, comma: writesComma(this.#language), bare };
    }
    get #language() {
        return isAsServed(this) ? (this.getAttribute('lang') ?? 'en') : languageAt(this);
    }
    /** The inputs as the calculator takes them. */
    reckonInput() {
        const given = ['units', 'shown', 'shared', ...Object.keys(this.calculator.fields)].map((key) => [
            key,
            this.own[key] ?? this.flow?.values[key],
        ]);
        return {
            ...Object.fromEntries(given),
            fabricWidths: isBlank(this.fabricWidth) ? this.flow?.values['fabricWidths'] : undefined,
            lang: this.#language,
            measured: this.measured,
        };
    }
    written(property) {
        const written = this.getAttribute(attributeOf(property));
        return written === null ? undefined : this.calculator.fields[property]?.kind === 'flag' || written;
    }
    /** The first thing wrong that a form minds; a blank input only where it is required. */
    get wrong() {
        return this.outcome.reckoning.issues.find((issue) => this.required || !isMissing(issue));
    }
    fault() {
        const { wrong, teller } = this;
        if (wrong)
            return { flag: isMissing(wrong) ? 'valueMissing' : 'badInput', message: teller.say(wrong) };
        const over = this.overStock;
        return over ? { flag: 'rangeOverflow', message: teller.say(over) } : undefined;
    }
    get overStock() {
        const { answer, calculator, lengthStyle, max } = this;
        return answer && overStock(max, answer, calculator, lengthStyle);
    }
    updated() {
        this.send();
        // For a worksheet around it, however its inputs came to change.
        this.dispatchEvent(new Event('reckoned', { bubbles: true }));
    }
    /** Whether the reader may switch units: not where an amount or a price goes by the unit it is sold in. */
    get switchable() {
        return !this.name && !this.flow && isBlank(this.price) && !this.locks('units');
    }
    /** What is locked, by the attributes' names. */
    get #locked() {
        return (textOf(this.lock)
            .toLowerCase()
            .match(/[^\s,]+/g) ?? []);
    }
    locks(attribute) {
        return this.#locked.includes(attribute);
    }
    /** That a name in `lock` is none of an input: what was meant stays open. */
    strayLock() {
        const names = ['units', ...Object.keys(this.calculator.fields).map(attributeOf)];
        return this.#locked
            .filter((name) => !names.includes(name))
            .map((text) => sayInFace('strayLock', { text, names: names.slice(-2) }));
    }
    /** Inputs as they stand now, reckoned rows as they were last good. */
    rows() {
        const { result, good } = this;
        const rows = result.working;
        if (!result.errors || !good)
            return rows;
        return good.result.working.map((row) => rows.find(({ id }) => id === row.id) ?? row);
    }
    /** The property that a cell is of, and which entry of it, where each has a cell: `borders2` is the second of `borders`. */
    placeOf(id) {
        const { fields } = this.calculator;
        const [, list = id, number = 1] = fields[id] ? [] : (/^(\D+)(\d+)$/.exec(id) ?? []);
        const key = list === id || fields[list]?.each ? list : id;
        return { key, field: fields[key], at: +number - 1 };
    }
    /** The entries of a list, as they stand in their cells. */
    entries(key) {
        return placesOf(this.rows().find(({ id }) => id === key)?.value ?? '', this.lengthStyle.comma);
    }
    /** The cell that a problem is in: of a list, the first that cannot be read. */
    cellOf({ input }) {
        const field = this.calculator.fields[input];
        const at = field?.each
            ? this.entries(input).findIndex((entry) => !entry || !this.reads(input, entry))
            : 0;
        return at > 0 ? `${input}${at + 1}` : input;
    }
    /** Whether a text can be read in a row. */
    reads(id, text) {
        const { field = lengthField() } = this.placeOf(id);
        return unlessRefused(() => (readField(field, text, this.lengthStyle, id), true), () => false);
    }
    /** What a cell is called. */
    labelOf(id) {
        const { field, key, at } = this.placeOf(id);
        if (field?.each)
            return this.teller.label(entryOf(key, at));
        return this.rows().find((row) => row.id === id)?.label ?? this.teller.label(id);
    }
}
/** What an entry of a list is called, by its place. */
const entryOf = (of, at) => say('entry', { of, number: at + 1 });
/** Lets the worksheet around a part give it its sizes, where that is still to come. */
const settleAround = (part) => {
    const around = isServer ? undefined : part.closest('quilt-worksheet');
    around?.settle?.();
};
const sameInput = (a, b) => !!b && Object.entries(a).every(([key, value]) => value === b[key]);

export { Reckoned, entryOf };
