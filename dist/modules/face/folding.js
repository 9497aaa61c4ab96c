import { initialOf } from '../ledger/field.js';
import { isExact } from '../measure/exact.js';
import { Typed } from './typed.js';

/** A typed field of which a reader sees at first only what she has to: the rest is folded away until she asks for it. */
class Folding extends Typed {
    constructor() {
        super(...arguments);
        /** Whether its lists are folded away at first. */
        this.foldsLists = true;
        /** What the reader opened or closed herself. */
        this.#opened = new Map();
        /** Whether a setting is off, empty or 0. */
        this.#isNothing = ({ id, value }) => {
            const given = this.outcome.reckoning.rows.find((row) => row.id === id)?.value;
            return value === '' || given === false || given === 'none' || (isExact(given) && given.equals(0));
        };
    }
    static { this.properties = { working: {} }; }
    /** What the reader opened or closed herself. */
    #opened;
    /** Whether this is open: the working, the settings, a list by its caption. */
    isOpen(what) {
        return this.#opened.get(what) ?? (what === 'working' && this.working === 'open');
    }
    /** Opens or closes it. */
    setOpen(what, open) {
        this.#opened.set(what, open);
        this.requestUpdate();
    }
    /** Whether somebody gave this input, here or in a worksheet, or has to. */
    #isAsked(id) {
        const { key, field } = this.placeOf(id);
        if (!field)
            return true;
        const { kind, optional } = field;
        // A list stands in its element as often as in an attribute.
        if (field.lines)
            return true;
        const isNeeded = initialOf(field, this.lengthStyle) === undefined && !optional && kind !== 'flag';
        const given = this.own[key] ?? this.flow?.values[key];
        // An attribute without a value is false if it is not there.
        const isGiven = given !== undefined && given !== false;
        return isNeeded || isGiven || (!!field.each && kind === 'lengths');
    }
    /** Whether a row is a setting that nobody gave. */
    isSetting({ id, role }) {
        return role === 'given' && !this.#isAsked(id);
    }
    /** Whether a row is folded away. A reader always sees what she wrote and what is wrong. */
    isFolded(row) {
        const { id, role } = row;
        if (row.more || this.said.some((issue) => this.cellOf(issue) === id))
            return false;
        if (role === 'given')
            return this.isSetting(row) && !this.isOpen('settings');
        return role !== 'measured' && !this.isOpen('working');
    }
    /** The settings that nobody gave, in short. The price is only of use to a shop, so an empty one is left out. */
    standing(rows) {
        const shown = rows.filter((row) => this.isSetting(row) && !this.#isOfShop(row));
        const others = shown.filter(this.#isNothing);
        return {
            settings: shown.filter((row) => !others.includes(row)),
            others: others.map(({ label }) => label),
        };
    }
    #isOfShop({ id }) {
        return id === 'currency' || this.placeOf(id).field?.kind === 'money';
    }
    /** Whether a setting is off, empty or 0. */
    #isNothing;
}

export { Folding };
