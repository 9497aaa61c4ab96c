import { isServer } from 'lit';
import { isBlank, isMissing, textOf, readField, say } from '../ledger/field.js';
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
    /** The result: plain JSON, with lengths as exact inches. If an input is wrong, it has `errors` and no `buy`. */
    get result() {
        return this.outcome.result;
    }
    /** The outcome of the inputs as they are now. */
    get outcome() {
        if (this.held)
            return this.held.outcome;
        if (!this.hasUpdated)
            settleAround(this);
        const input = this.reckonInput();
        const { calculator, teller } = this;
        const last = this.#outcome;
        if (last && sameInput(input, this.#input)) {
            if (last.t.words === teller.words)
                return last;
            // The words of its language have come: the same result in other words.
            return this.#keep(new Outcome(last.reckoning, calculator.fields, teller));
        }
        this.#input = input;
        return this.#keep(new Outcome(calculator.reckon(input), calculator.fields, teller));
    }
    hold(work) {
        this.held ??= { outcome: this.outcome, teller: this.teller };
        try {
            work();
        }
        finally {
            this.held = undefined;
        }
    }
    requestUpdate(...of) {
        // What is taken out of a page as it is drawn may lose the focus, and so change something.
        this.held = undefined;
        super.requestUpdate(...of);
    }
    update(...of) {
        this.hold(() => super.update(...of));
    }
    send() {
        this.hold(() => super.send());
    }
    #keep(outcome) {
        this.#outcome = outcome;
        this.good = goodOf(outcome) ?? this.goodBefore;
        return outcome;
    }
    /** The answer as it is now, or undefined if an input is wrong. */
    get answer() {
        return this.outcome.reckoning.own;
    }
    /** The teller, which makes the sentences. */
    get teller() {
        return this.held?.teller ?? this.tellerNow();
    }
    /** The same, as it is now. */
    tellerNow() {
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
    /** The last outcome with an answer, shown while an input is wrong. */
    get goodBefore() {
        return this.good;
    }
    /** Reckons again after something else than an input changed. */
    renew() {
        this.#input = undefined;
        // Before it is drawn, only a form needs the result.
        if (this.hasUpdated || this.form)
            this.send();
    }
    /** The same, and shows it. */
    reckonAgain() {
        this.renew();
        this.requestUpdate();
    }
    /** The value for a form: the amount to buy, as a decimal number in the shop's unit. Empty if an input is wrong. */
    get value() {
        const { answer } = this;
        // A third of a yard has endless decimals. The value may not be less than the amount.
        return answer ? decimal(upTo(answer.buy.amount, exact(1, 10_000)), 4) : '';
    }
    /** How lengths are shown here. */
    get lengthStyle() {
        if (this.held)
            return this.held.teller.style;
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
        const { own, flow, calculator } = this;
        const input = {
            fabricWidths: isBlank(this.fabricWidth) ? flow?.values['fabricWidths'] : undefined,
            lang: this.#language,
            measured: this.measured,
        };
        for (const key of ['units', 'shown', 'shared', 'apart', ...Object.keys(calculator.fields)])
            input[key] = own[key] ?? flow?.values[key];
        return input;
    }
    written(property) {
        const written = this.getAttribute(attributeOf(property));
        return written === null ? undefined : this.calculator.fields[property]?.kind === 'flag' || written;
    }
    /** The first error that stops a form. A blank input stops it only with `required`. */
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
        // Tells a worksheet around it, for every kind of change.
        this.dispatchEvent(new Event('reckoned', { bubbles: true }));
    }
    /** Whether the reader may switch units. She may not if a price or a form depends on the unit of sale. */
    get switchable() {
        return !this.isSent && !this.flow && isBlank(this.price) && !this.locks('units');
    }
    /** Whether a form may depend on its value. */
    get isSent() {
        return !!this.name;
    }
    /** The names of the locked attributes. */
    get #locked() {
        return (textOf(this.lock)
            .toLowerCase()
            .match(/[^\s,]+/g) ?? []);
    }
    locks(attribute) {
        return this.#locked.includes(attribute);
    }
    /** Warns about a name in `lock` that is not an input, because the input that the author meant stays open. */
    strayLock() {
        const names = ['units', ...Object.keys(this.calculator.fields).map(attributeOf)];
        return this.#locked
            .filter((name) => !names.includes(name))
            .map((text) => sayInFace('strayLock', { text, names: names.slice(-2) }));
    }
    /** The rows: inputs as they are now, reckoned rows as in the last good answer. */
    rows() {
        const { result, good } = this;
        const rows = result.working;
        if (!result.errors || !good)
            return rows;
        return good.result.working.map((row) => rows.find(({ id }) => id === row.id) ?? row);
    }
    /** The property of a cell, and which entry, if each entry has a cell: `borders2` is the second of `borders`. */
    placeOf(id) {
        const { fields } = this.calculator;
        const [, list = id, number = 1] = fields[id] ? [] : (/^(\D+)(\d+)$/.exec(id) ?? []);
        const key = list === id || fields[list]?.each ? list : id;
        return { key, field: fields[key], at: +number - 1 };
    }
    /** The entries of a list, as the cells show them. */
    entries(key) {
        return placesOf(this.rows().find(({ id }) => id === key)?.value ?? '', this.lengthStyle.comma);
    }
    /** The cell with the problem. In a list, the first entry that cannot be read. */
    cellOf({ input }) {
        const field = this.calculator.fields[input];
        const at = field?.each
            ? this.entries(input).findIndex((entry) => !entry || !this.reads(input, entry))
            : 0;
        return at > 0 ? `${input}${at + 1}` : input;
    }
    /** Whether a row can read this text. */
    reads(id, text) {
        const { field = lengthField() } = this.placeOf(id);
        return unlessRefused(() => (readField(field, text, this.lengthStyle, id), true), () => false);
    }
    /** The name of a cell. */
    labelOf(id) {
        const { field, key, at } = this.placeOf(id);
        if (field?.each)
            return this.teller.label(entryOf(key, at));
        return this.rows().find((row) => row.id === id)?.label ?? this.teller.label(id);
    }
}
/** What an entry of a list is called, by its place. */
const entryOf = (of, at) => say('entry', { of, number: at + 1 });
/** Lets the worksheet around a part give it its sizes, if it has not done so yet. */
const settleAround = (part) => {
    const around = isServer ? undefined : part.closest('quilt-worksheet');
    around?.settle?.();
};
const sameInput = (a, b) => {
    if (!b)
        return false;
    for (const key in a)
        if (a[key] !== b[key])
            return false;
    return true;
};

export { Reckoned, entryOf };
