import { reckon } from '../../calculators/block/reckon.js';
import { blockFields } from '../../calculators/block/shape.js';
import { block } from '../../calculators/block/block.js';
import { propertiesOf } from '../../face/calculator.js';
import { GridFace } from '../../face/grid-face.js';
import { isAsServed } from '../../face/server.js';
import { block as block$1 } from '../../words/en/block.js';
import { inEnglish } from '../../words/en/english.js';
import { gridStyles, MOST_SHOWN, grid, chartIn } from './grid.js';

/** What a block's pieces come from. */
const WRITTEN = ['chart', 'count', 'block'];
/**
 * One block of a quilt, as a chart of fabric letters: what to cut, the cloth of each fabric, and the block drawn to scale. The
 * chart is the `<table>` inside the element, or typed into the sheet. Many pieces are planned in the background; `result` has
 * `errors` until their plan is ready, and a `change` event tells when it is.
 *
 * @tagname quilt-block
 */
class QuiltBlock extends GridFace {
    static { this.styles = [...GridFace.styles, gridStyles]; }
    static { this.properties = { ...propertiesOf(blockFields), fills: { type: Boolean } }; }
    /** A name is what the block is called. Only in a form is it the name of a field. */
    get isSent() {
        return super.isSent && !!this.form;
    }
    get called() {
        return this.name?.trim() || super.called;
    }
    constructor() {
        super();
        this.calculator = {
            ...block,
            reckon: (input) => (isAsServed(this) ? reckon(input) : this.plans.reckon((plan) => reckon(input, plan))),
        };
        this.english = inEnglish(block$1);
        this.gridKey = 'chart';
        this.mostRows = MOST_SHOWN;
        /** Whether a cell of the chart is wrong. If no single cell is, all are. */
        this.#isWrongAt = (row, at) => {
            const issue = this.said.find(({ input }) => input === 'chart');
            if (!issue)
                return false;
            const place = issue.values;
            return issue.code !== 'inCell' || (place.row === row + 1 && place.cell === at + 1);
        };
        this.fills = false;
        this.oneWay = false;
    }
    /** Whether the reader may change how many blocks there are. */
    get isCounted() {
        return !this.off && !this.locks('count');
    }
    /** Changes how many blocks there are, as if the reader had typed it. */
    countAs(many) {
        this.change('count', `${many}`);
        this.tellBoth();
    }
    /** The chart's row has a cell for each patch. */
    grid(state) {
        return grid(state, this.#isWrongAt);
    }
    writeGrid(rows) {
        return chartIn(rows);
    }
    /** Whether a cell of the chart is wrong. If no single cell is, all are. */
    #isWrongAt;
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
