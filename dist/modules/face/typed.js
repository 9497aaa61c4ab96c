import { isServer } from 'lit';
import { isExact } from '../measure/exact.js';
import { isBegun, bothSides, inUnit, placesOf } from '../measure/parse.js';
import { dress } from './dress.js';
import { nudged } from './nudge.js';
import { Reckoned } from './reckoned.js';
import { takeOver, isTakenOver } from './server.js';

/** A reckoned field in whose cells a reader types: with the keyboard, over reckoned values, and before the script came. */
class Typed extends Reckoned {
    /** The cell that the pointer went down on while it had not the focus. */
    #pressed;
    /** Goes to the first cell that can be changed. */
    focus(options) {
        this.drawNow();
        this.#cellOf()?.focus(options);
    }
    // A half-typed input gave no answer to go back to, but while it is typed the last one stays.
    get goodBefore() {
        return this.editing && !this.editing.isBegun ? this.editing.good : this.good;
    }
    /** What is wrong, but for what is being typed and may still become right. */
    get said() {
        const { editing, outcome } = this;
        return outcome.reckoning.issues.filter((issue) => !editing?.isBegun || this.cellOf(issue) !== editing.id);
    }
    /** Whether the cell being typed in holds another text than when it was entered. */
    get #isTyped() {
        return this.editing?.text !== this.editing?.before;
    }
    constructor() {
        super();
        /** The rows that the value of the cell being typed in came from. */
        this.marked = [];
        /** The cell that the pointer went down on while it had not the focus. */
        this.#pressed = null;
        this.typed = ({ target }) => {
            const id = rowOf(target);
            if (!id)
                return;
            const input = target;
            const choices = [...this.renderRoot.querySelectorAll(`select[data-row=${id}]`)];
            const text = input.type === 'checkbox'
                ? input.checked
                    ? 'yes'
                    : 'no'
                : choices.map(({ value }) => value).join(', ') || input.value;
            const { editing } = this;
            if (editing?.id === id) {
                editing.text = text;
                editing.isBegun =
                    this.placeOf(id).field?.kind !== 'own' &&
                        isBegun(text, (whole) => this.#sidesIn(id, whole)?.every((side, at) => this.reads(SIDES[at], side)) ??
                            this.reads(id, whole));
            }
            this.#take(id, text);
        };
        /**
         * The browser's own `change` stops at the shadow root; the page hears this one. What is typed in changes when it is
         * left, since the browser does not count what a key of the sheet wrote there.
         */
        this.changed = (event) => {
            event.stopPropagation();
            if (!isText(event.target))
                this.tell('change');
        };
        this.focusIn = ({ target }) => {
            const id = rowOf(target);
            if (!id)
                return;
            this.marked = this.rows().find((row) => row.id === id)?.from ?? [];
            const { field, key } = this.placeOf(id);
            if (isText(target))
                this.editing = {
                    id,
                    text: target.value,
                    before: target.value,
                    own: Object.fromEntries(this.#propertiesOf(id).map((key) => [key, this.own[key]])),
                    entries: field?.each ? this.entries(key) : [],
                    good: this.good,
                };
            this.requestUpdate();
        };
        this.pointed = ({ target }) => {
            this.#pressed = target === this.shadowRoot.activeElement ? null : target;
        };
        /** A first click into a cell of one line marks what stands there, as the Tab key does; typing then replaces it. */
        this.clicked = ({ target }) => {
            if (target === this.#pressed && is(target, "[type='text']")) {
                const cell = target;
                if (cell.selectionStart === cell.selectionEnd)
                    cell.select();
            }
        };
        this.focusOut = ({ target }) => {
            const id = rowOf(target);
            if (!id)
                return;
            // An emptied cell of a reckoned row means the reckoned value again.
            if (this.measured?.[id]?.trim() === '')
                this.#forget(id);
            const isTyped = this.#isTyped;
            this.#finish();
            this.editing = undefined;
            this.marked = [];
            this.requestUpdate();
            if (isTyped)
                this.tell('change');
        };
        this.typeIn = (sign) => {
            const input = this.shadowRoot.activeElement;
            if (!isText(input))
                return;
            input.setRangeText(sign, input.selectionStart, input.selectionEnd, 'end');
            this.#replace(input, input.value);
        };
        this.keyDown = (event) => {
            const { target, key, altKey } = event;
            const id = rowOf(target);
            if (!id || event.isComposing)
                return;
            const enter = key === 'Enter';
            // In a cell of several lines these keys move among its lines.
            const lines = is(target, 'textarea');
            if (enter && !lines)
                this.#finish();
            const step = lines
                ? 0
                : key === 'ArrowDown' || (enter && !event.shiftKey)
                    ? 1
                    : enter || key === 'ArrowUp'
                        ? -1
                        : 0;
            if (step && altKey && isText(target))
                this.#nudge(target, -step);
            else if (step && !altKey && (enter || !is(target, 'select')))
                this.#walk(target, step);
            // With nothing to put back the key is the page's: it may close a dialog.
            else if (key === 'Escape' && isText(target) && this.#isTyped) {
                const editing = this.editing;
                target.value = editing.text = editing.before;
                editing.isBegun = false;
                this.#restore();
                this.requestUpdate();
                this.tell('input');
            }
            else
                return;
            event.preventDefault();
        };
        this.switchUnits = () => {
            this.change('shown', this.lengthStyle.units === 'in' ? 'cm' : 'in');
            this.#tellBoth();
        };
        // Lit would make it when the element comes into a page, and makes none where there is one.
        if (!isServer)
            Object.assign(this, { renderRoot: this.createRenderRoot() });
    }
    createRenderRoot() {
        const { shadowRoot } = this;
        let isLits = this.ownerDocument === document;
        if (shadowRoot) {
            const typed = typedIn(shadowRoot);
            const active = shadowRoot.activeElement?.id;
            isLits &&= takeOver(this);
            void this.updateComplete.then(() => this.#goOn(typed, active));
        }
        if (isLits)
            return super.createRenderRoot();
        // Lit's own way shares style sheets, which a document allows only those that were made in it.
        const root = shadowRoot ?? this.attachShadow({ mode: 'open' });
        dress(root, this);
        return root;
    }
    /** Goes on from what a server wrote with what the reader did there already. */
    #goOn(typed, active) {
        isTakenOver(this);
        this.requestUpdate();
        const cellOf = (id) => id ? this.shadowRoot.getElementById(id) : null;
        // Entered anew, so that what is typed there counts as typed; in a window that waits behind another no event says so.
        cellOf(active)?.focus();
        this.focusIn({ target: cellOf(active) });
        for (const [id, text] of typed) {
            const cell = cellOf(id);
            if (cell)
                this.#replace(cell, text);
        }
    }
    disconnectedCallback() {
        super.disconnectedCallback();
        // Not every browser says that the cell lost the focus.
        this.editing = undefined;
        this.marked = [];
        this.requestUpdate();
    }
    /** Moving to another document takes a shadow root's styles away. */
    adoptedCallback() {
        if (this.shadowRoot)
            dress(this.shadowRoot, this);
    }
    startAgain() {
        this.editing = undefined;
        void this.updateComplete.then(() => this.focusIn({ target: this.shadowRoot.activeElement }));
    }
    faulty() {
        const { wrong } = this;
        return this.#cellOf(wrong && this.cellOf(wrong));
    }
    /** The cell of a row; the first that can be changed where no row is named, or it is not shown. */
    #cellOf(id = '') {
        const root = this.shadowRoot;
        return (root?.querySelector(`[data-row='${id}']`) ??
            root?.querySelector('[part=cell]') ??
            undefined);
    }
    /** Where what is typed in a row is kept. */
    #propertiesOf(id) {
        const { key, field } = this.placeOf(id);
        return SIDES.includes(key) ? SIDES : [field ? key : 'measured'];
    }
    /** Both sides of a quilt, where they are written in the place of one and each has a cell that is open. */
    #sidesIn(id, text) {
        const { fields } = this.calculator;
        return SIDES.includes(id) && SIDES.every((side) => fields[side] && !this.locks(side))
            ? bothSides(text, this.lengthStyle)
            : undefined;
    }
    #take(id, text) {
        const { editing } = this;
        const { field, key, at } = this.placeOf(id);
        const sides = this.#sidesIn(id, text);
        if (sides)
            SIDES.forEach((side, at) => this.#set(side, sides[at]));
        else {
            if (editing?.isBoth)
                this.#restore();
            this.#set(key, field?.each ? this.#listWith(key, at, text) : text);
        }
        if (editing)
            editing.isBoth = !!sides;
        this.requestUpdate();
    }
    #set(id, text) {
        const field = this.calculator.fields[id];
        const { units, bare } = this.lengthStyle;
        if (units !== bare && !field?.each)
            text = field ? (field.marked?.(text, units) ?? text) : inUnit(text, units);
        if (field)
            this.change(id, field.kind === 'flag' ? text === 'yes' : text);
        else
            this.change('measured', { ...this.measured, [id]: text });
    }
    /** A list with this text, which may hold several entries, in the place of one; without it where there is no text. */
    #listWith(key, at, text) {
        const { comma, units } = this.lengthStyle;
        const { editing } = this;
        const isTyped = text !== undefined && editing && this.placeOf(editing.id).key === key;
        const entries = isTyped ? [...editing.entries] : this.entries(key);
        const isNew = at >= entries.length;
        const typed = placesOf(text ?? '', comma);
        // An emptied entry stays, until it is taken away.
        if (!typed.length && text !== undefined && !isNew)
            typed.push('');
        entries.splice(at, 1, ...typed);
        // A unit behind the last of a list would hold for others that have none.
        const marked = entries.map((entry) => (entry && this.reads(key, entry) ? inUnit(entry, units) : entry));
        const between = comma ? '; ' : ', ';
        return marked.join(between) + (marked.at(-1) === '' ? between : '');
    }
    /** Takes an entry out of a list; its cell is then that of the next one. */
    takeAway(id) {
        const { key, at } = this.placeOf(id);
        this.change(key, this.#listWith(key, at));
        this.#tellBoth();
        this.#goTo(id);
    }
    /** What was pressed there is gone, and the focus with it. */
    #goTo(id) {
        if (this.shadowRoot.activeElement)
            void this.updateComplete.then(() => this.#cellOf(id)?.focus());
    }
    /** Sets back what the cell being typed in has changed. */
    #restore() {
        const { own } = this.editing;
        for (const key in own)
            if (this.own[key] !== own[key])
                this.change(key, own[key]);
    }
    /** Back to what is reckoned there. */
    #forget(id) {
        const { [id]: _gone, ...kept } = this.measured ?? {};
        this.change('measured', kept);
    }
    tell(type) {
        this.dispatchEvent(new Event(type, { bubbles: true, composed: true }));
    }
    /** What is typed will not become anything else, and is wrong where it cannot be read. */
    #finish() {
        const { editing } = this;
        if (!editing?.isBegun)
            return;
        editing.isBegun = false;
        if (!this.answer)
            this.good = editing.good;
        this.requestUpdate();
    }
    putBack(id) {
        if (this.calculator.fields[id])
            this.change(id, null);
        else
            this.#forget(id);
        this.#tellBoth();
        this.#goTo(id);
    }
    #tellBoth() {
        this.tell('input');
        this.tell('change');
    }
    /** Puts a text in a cell as if the reader had typed it. */
    #replace(input, text) {
        input.value = text;
        input.dispatchEvent(new Event('input', { bubbles: true, composed: true }));
    }
    #walk(from, step) {
        const cells = [...this.renderRoot.querySelectorAll('[data-row]')];
        const next = cells[cells.indexOf(from) + step];
        next?.focus();
        if (isText(next))
            next.select();
    }
    #nudge(input, by) {
        const { field } = this.placeOf(rowOf(input));
        const kind = !field || field.each ? 'length' : field.kind;
        const mark = this.good?.reckoning.rows.find(({ id }) => id === 'mark')?.value;
        const text = nudged(input.value, by, kind, this.lengthStyle, isExact(mark) ? mark : undefined);
        if (text)
            this.#replace(input, text);
    }
}
const SIDES = ['width', 'length'];
const rowOf = (target) => target?.dataset?.['row'];
/** What a reader typed into a server's cells before the script came: the row of each, and its text. */
const typedIn = (served) => [...served.querySelectorAll("[type='text']")]
    .filter(({ value, defaultValue }) => value !== defaultValue)
    .map(({ id, value }) => [id, value]);
/** Not by `instanceof`: in a frame's document an element is of another window's class. */
const is = (target, selector) => !!target?.matches?.(selector);
const isText = (target) => is(target, "[type='text'], textarea");

export { Typed };
