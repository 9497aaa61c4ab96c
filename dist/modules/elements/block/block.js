import { isServer } from 'lit';
import { reckon } from '../../calculators/block/reckon.js';
import { blockFields } from '../../calculators/block/shape.js';
import { block } from '../../calculators/block/block.js';
import { propertiesOf } from '../../face/calculator.js';
import { ListFace } from '../../face/list-face.js';
import { isAsServed } from '../../face/server.js';
import { block as block$1 } from '../../words/en/block.js';
import { inEnglish } from '../../words/en/english.js';
import { gridStyles, isOfGrid, chartAround, beyond, chartWith, grid } from './grid.js';

/** What a block's pieces come from. */
const WRITTEN = ['chart', 'count', 'block'];
/**
 * One block of a quilt, as a chart of fabric letters: what to cut, the cloth of each fabric, and the block drawn to scale. The
 * chart is the `<table>` inside the element, or typed into the sheet. Many pieces are planned in the background; `result` has
 * `errors` until their plan is ready, and a `change` event tells when it is.
 *
 * @tagname quilt-block
 */
class QuiltBlock extends ListFace {
    static { this.styles = [...ListFace.styles, gridStyles]; }
    static { this.properties = propertiesOf(blockFields); }
    /** A name is what the block is called. Only in a form is it the name of a field. */
    get isSent() {
        return super.isSent && !!this.form;
    }
    constructor() {
        super();
        this.calculator = {
            ...block,
            reckon: (input) => (isAsServed(this) ? reckon(input) : this.plans.reckon((plan) => reckon(input, plan))),
        };
        this.english = inEnglish(block$1);
        /** Whether a cell of the chart is wrong. If no single cell is, all are. */
        this.#isWrongAt = (row, at) => {
            const issue = this.said.find(({ input }) => input === 'chart');
            if (!issue)
                return false;
            const place = issue.values;
            return issue.code !== 'inCell' || (place.row === row + 1 && place.cell === at + 1);
        };
        this.#typed = this.typed;
        this.typed = (event) => {
            const { target } = event;
            if (isOfGrid(target))
                this.#take(chartAround(target));
            else
                this.#typed(event);
        };
        /** The text in the cell of the chart that has the focus, before anything was typed. */
        this.#before = '';
        this.#focusIn = this.focusIn;
        this.focusIn = (event) => {
            this.#focusIn(event);
            const { target } = event;
            if (!isOfGrid(target) || !this.editing)
                return;
            this.editing.text = this.editing.before = chartAround(target);
            this.#before = target.value;
        };
        this.#keyDown = this.keyDown;
        this.keyDown = (event) => {
            const { target, key } = event;
            const step = key === 'ArrowDown' ? 1 : key === 'ArrowUp' ? -1 : 0;
            const next = step && !event.altKey && isOfGrid(target) ? beyond(target, step) : undefined;
            if (!next) {
                this.#keyDown(event);
                // The whole chart was put back, but into this one cell.
                if (key === 'Escape' && isOfGrid(target))
                    target.value = this.#before;
                return;
            }
            next.focus();
            next.select();
            event.preventDefault();
        };
        /** A block of cells goes into the cells from this one on. */
        this.#pasted = (event) => {
            const [target] = event.composedPath();
            const text = event.clipboardData?.getData('text/plain') ?? '';
            if (!isOfGrid(target) || !/[\t\n]/.test(text))
                return;
            event.preventDefault();
            this.#take(chartWith(target, text));
            this.tell('input');
        };
        if (!isServer)
            this.addEventListener('paste', this.#pasted);
    }
    /** The chart's row has a cell for each patch. */
    placeOf(id) {
        const place = super.placeOf(id);
        const show = (state) => grid(state, this.#isWrongAt);
        return id === 'chart' && place.field
            ? { ...place, field: { ...place.field, show } }
            : place;
    }
    /** A week is of use only in a sew-along. */
    standing(settings) {
        return super.standing(settings.filter(({ id, value }) => id !== 'week' || value));
    }
    /** Whether a cell of the chart is wrong. If no single cell is, all are. */
    #isWrongAt;
    /** Takes a chart that the reader changed in one of its cells. */
    #take(chart) {
        if (this.editing)
            this.editing.text = chart;
        this.change('chart', chart);
        this.requestUpdate();
    }
    #typed;
    /** The text in the cell of the chart that has the focus, before anything was typed. */
    #before;
    #focusIn;
    #keyDown;
    /** A block of cells goes into the cells from this one on. */
    #pasted;
    get isAsWritten() {
        return WRITTEN.every((key) => (this[key] ?? null) === this.getAttribute(key));
    }
    reckonInput() {
        return {
            ...super.reckonInput(),
            ...this.surroundings(),
            name: this.name,
            chart: this.chart ?? this.table,
        };
    }
}

export { QuiltBlock };
