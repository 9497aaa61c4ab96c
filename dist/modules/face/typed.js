import { isServer } from 'lit';
import { isExact } from '../measure/exact.js';
import { isBegun, bothSides, inUnit, placesOf } from '../measure/parse.js';
import { giveStyles } from './shadow-styles.js';
import { nudged } from './nudge.js';
import { Reckoned } from './reckoned.js';
import { comesFromServer } from './said-once.js';
import { takeOver, isTakenOver } from './server.js';

/** A reckoned field with cells to type in: keyboard, values typed over reckoned ones, and text from before the script came. */
class Typed extends Reckoned {
    /** The cell that the pointer was pressed on before it had the focus. */
    #pressed;
    /** Goes to the first cell that can be changed. */
    focus(options) {
        this.drawNow();
        this.#cellOf()?.focus(options);
    }
    // While the reader is still typing, the last answer stays. After that, a half-typed input has no answer to go back to.
    get goodBefore() {
        return this.editing && !this.editing.isBegun ? this.editing.good : this.good;
    }
    /** All errors, except in a text that the reader is still typing and that can still become right. */
    get said() {
        const { editing, outcome } = this;
        return outcome.reckoning.issues.filter((issue) => !editing?.isBegun || this.cellOf(issue) !== editing.id);
    }
    /** Whether the text of the cell has changed since the reader entered it. */
    get #isTyped() {
        return this.editing?.text !== this.editing?.before;
    }
    constructor() {
        super();
        /** The rows that the value of this cell came from. */
        this.marked = [];
        /** The cell that the pointer was pressed on before it had the focus. */
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
         * The browser's own `change` stops at the shadow root, so we send one for the page. We send it when the reader leaves the cell,
         * because the browser does not notice text from our own keys.
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
        /** The first click into a cell of one line selects its text, like the Tab key. Typing then replaces it. */
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
            // An empty cell of a reckoned row means: use the reckoned value again.
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
            // In a cell of several lines, these keys move between its lines.
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
            // If there is nothing to put back, the key is for the page: it may close a dialog.
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
        // Lit would make it later, when the element comes into a page. If there is one, Lit keeps it.
        if (!isServer)
            Object.assign(this, { renderRoot: this.createRenderRoot() });
    }
    createRenderRoot() {
        const { shadowRoot } = this;
        let isLits = this.ownerDocument === document;
        if (shadowRoot) {
            comesFromServer(this);
            const typed = typedIn(shadowRoot);
            const active = shadowRoot.activeElement?.id;
            isLits &&= takeOver(this);
            void this.updateComplete.then(() => this.#goOn(typed, active));
        }
        if (isLits)
            return super.createRenderRoot();
        // Lit shares style sheets, but a document accepts only those that were made in it.
        const root = shadowRoot ?? this.attachShadow({ mode: 'open' });
        giveStyles(root, this);
        return root;
    }
    /** Continues with what the reader typed before the script came. */
    #goOn(typed, active) {
        isTakenOver(this);
        this.requestUpdate();
        const cellOf = (id) => id ? this.shadowRoot.getElementById(id) : null;
        // Enters the cell again, so that its text counts as typed. In a window in the background no event would say so.
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
        // Some browsers send no event when the cell loses the focus.
        this.editing = undefined;
        this.marked = [];
        this.requestUpdate();
    }
    /** A shadow root loses its styles when it moves to another document. */
    adoptedCallback() {
        if (this.shadowRoot)
            giveStyles(this.shadowRoot, this);
    }
    startAgain() {
        this.editing = undefined;
        void this.updateComplete.then(() => this.focusIn({ target: this.shadowRoot.activeElement }));
    }
    faulty() {
        const { wrong } = this;
        return this.#cellOf(wrong && this.cellOf(wrong));
    }
    /** The cell of a row. Without a row, or if it is not shown, the first cell that can be changed. */
    #cellOf(id = '') {
        const root = this.shadowRoot;
        return (root?.querySelector(`[data-row='${id}']`) ??
            root?.querySelector('[part=cell]') ??
            undefined);
    }
    /** The property that keeps what the reader types in a row. */
    #propertiesOf(id) {
        const { key, field } = this.placeOf(id);
        return SIDES.includes(key) ? SIDES : [field ? key : 'measured'];
    }
    /** Both sides of the quilt, if somebody wrote them into one cell and both cells are open. */
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
    /** The list with this text in place of one entry. The text may have several entries. Without a text the entry goes away. */
    #listWith(key, at, text) {
        const { comma, units } = this.lengthStyle;
        const { editing } = this;
        const isTyped = text !== undefined && editing && this.placeOf(editing.id).key === key;
        const entries = isTyped ? [...editing.entries] : this.entries(key);
        const isNew = at >= entries.length;
        const typed = placesOf(text ?? '', comma);
        // An empty entry stays until the reader takes it away.
        if (!typed.length && text !== undefined && !isNew)
            typed.push('');
        entries.splice(at, 1, ...typed);
        // A unit after the last entry would count for the others too.
        const marked = entries.map((entry) => (entry && this.reads(key, entry) ? inUnit(entry, units) : entry));
        const between = comma ? '; ' : ', ';
        return marked.join(between) + (marked.at(-1) === '' ? between : '');
    }
    /** Takes an entry out of a list. The next entry then has its cell. */
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
    /** Undoes what the cell has changed. */
    #restore() {
        const { own } = this.editing;
        for (const key in own)
            if (this.own[key] !== own[key])
                this.change(key, own[key]);
    }
    /** Goes back to the reckoned value. */
    #forget(id) {
        const { [id]: _gone, ...kept } = this.measured ?? {};
        this.change('measured', kept);
    }
    tell(type) {
        this.dispatchEvent(new Event(type, { bubbles: true, composed: true }));
    }
    /** The reader has finished. If the text cannot be read, it is wrong now. */
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
        const cells = [...this.renderRoot.querySelectorAll('tr:not(.folded) [data-row]')];
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
/** What the reader typed into the server's cells before the script came: each row with its text. */
const typedIn = (served) => [...served.querySelectorAll("[type='text']")]
    .filter(({ value, defaultValue }) => value !== defaultValue)
    .map(({ id, value }) => [id, value]);
/** `instanceof` does not work here: in a frame, elements have the classes of another window. */
const is = (target, selector) => !!target?.matches?.(selector);
const isText = (target) => is(target, "[type='text'], textarea");

export { Typed };
