import { isServer } from 'lit';
import { withBlock, blockOf, isOfGrid, placeOf, textsAround, beyond, cellsAround } from './grid.js';
import { ListFace } from './list-face.js';

const isChoice = ({ localName }) => localName === 'select';
/** A face with an input that is a grid of cells. Its text is written from the texts in the cells. */
class GridFace extends ListFace {
    /** The rows after somebody typed in one cell. */
    afterTyping(rows, _place) {
        return rows;
    }
    /** The rows after somebody pasted a text into one cell. */
    afterPasting(rows, place, text) {
        return withBlock(rows, place, blockOf(text));
    }
    /** Whether a row is only begun, so that what it lacks is not wrong yet. */
    isBegunRow(_rows, _row) {
        return false;
    }
    /** The text in it before anything was typed. */
    #before;
    #live;
    constructor() {
        super();
        /** Whether Enter goes to the next row of the same column, and not to the next cell. */
        this.entersDown = false;
        /** The text in it before anything was typed. */
        this.#before = '';
        this.#typed = this.typed;
        this.typed = (event) => {
            const { target } = event;
            if (!isOfGrid(target))
                return this.#typed(event);
            const place = placeOf(target);
            this.#takeRows(this.afterTyping(textsAround(target), place), place[0]);
            // A choice tells of its change by itself.
            if (this.editing && isChoice(target))
                this.editing.before = this.editing.text;
        };
        this.#focusIn = this.focusIn;
        this.focusIn = (event) => {
            this.#focusIn(event);
            const { target } = event;
            if (!isOfGrid(target))
                return;
            const rows = textsAround(target);
            const text = this.writeGrid(rows);
            const { gridKey: id, good } = this;
            this.editing ??= { id, text, before: text, own: {}, entries: [], good };
            this.editing.text = this.editing.before = text;
            this.entered = placeOf(target);
            this.editing.isBegun = this.isBegunRow(rows, this.entered[0]);
            this.#before = target.value;
        };
        this.#focusOut = this.focusOut;
        this.focusOut = (event) => {
            const { target, relatedTarget } = event;
            this.#focusOut(event);
            this.entered = undefined;
            if (isOfGrid(target) && !isOfGrid(relatedTarget))
                this.#live = undefined;
        };
        this.#keyDown = this.keyDown;
        this.keyDown = (event) => {
            const { target, key } = event;
            const step = isOfGrid(target) ? this.#stepOf(event, target) : 0;
            if (step && isOfGrid(target)) {
                this.#goOn(target, step);
                event.preventDefault();
                return;
            }
            const isBack = key === 'Escape' && isOfGrid(target) && this.editing?.text !== this.editing?.before;
            this.#keyDown(event);
            if (isBack && isOfGrid(target))
                this.#putBack(target);
        };
        /** A block of cells goes into the cells from this one on. */
        this.#pasted = (event) => {
            const [target] = event.composedPath();
            const text = event.clipboardData?.getData('text/plain') ?? '';
            if (!isOfGrid(target) || !/[\t\n]/.test(text))
                return;
            event.preventDefault();
            const place = placeOf(target);
            const rows = this.afterPasting(textsAround(target), place, text);
            this.#takeRows(rows, place[0]);
            this.tell('input');
            if (rows.length <= this.mostRows)
                return;
            this.goTo(this.gridKey);
            target.blur();
        };
        if (!isServer)
            this.addEventListener('paste', this.#pasted);
    }
    /** The cells as the reader has them while she is in the grid: an emptied row keeps its place until she leaves. */
    get liveRows() {
        return this.#live?.from === this.own[this.gridKey] ? this.#live?.rows : undefined;
    }
    placeOf(id) {
        const place = super.placeOf(id);
        // Somebody who types it as a text goes on with the text, also if it would fit in cells by now.
        const isText = this.editing?.id === this.gridKey && !this.entered;
        const show = (state) => (isText ? undefined : this.grid(state));
        return id === this.gridKey && place.field
            ? { ...place, field: { ...place.field, show } }
            : place;
    }
    /** Takes what the reader changed in one of the cells. */
    #takeRows(rows, row) {
        const text = this.writeGrid(rows);
        const { editing } = this;
        if (editing)
            editing.text = text;
        this.take(this.gridKey, text);
        this.#live = { rows, from: this.own[this.gridKey] };
        if (editing)
            editing.isBegun = this.isBegunRow(rows, row);
    }
    #typed;
    #focusIn;
    #focusOut;
    #keyDown;
    /** How many rows a key goes down. */
    #stepOf({ key, altKey, shiftKey, isComposing }, target) {
        if (altKey || isComposing)
            return 0;
        if (key === 'Enter' && this.entersDown)
            return shiftKey ? -1 : 1;
        // In a list to choose from, the arrows choose.
        if (isChoice(target))
            return 0;
        return key === 'ArrowDown' ? 1 : key === 'ArrowUp' ? -1 : 0;
    }
    /** Goes to the cell below or above; after the last row and before the first, to what is next on the page. */
    #goOn(target, step) {
        const next = beyond(target, step);
        const edge = cellsAround(target).at(step > 0 ? -1 : 0);
        if (!next)
            return this.walk(edge ?? target, step);
        next.focus();
        if ('select' in next)
            next.select();
    }
    /** The whole text was put back, but into this one cell. */
    #putBack(target) {
        target.value = this.#before;
        this.#live = { rows: textsAround(target), from: this.own[this.gridKey] };
    }
    /** A block of cells goes into the cells from this one on. */
    #pasted;
}

export { GridFace };
