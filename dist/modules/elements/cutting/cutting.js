import { cutting } from '../../calculators/cutting/cutting.js';
import { reckon } from '../../calculators/cutting/reckon.js';
import { say, cuttingFields } from '../../calculators/cutting/shape.js';
import { isBlank } from '../../ledger/field.js';
import { propertiesOf } from '../../face/calculator.js';
import { ListFace } from '../../face/list-face.js';
import { isAsServed } from '../../face/server.js';
import { cutting as cutting$1 } from '../../words/en/cutting.js';
import { inEnglish } from '../../words/en/english.js';

/** A note: the price was for what the list was cut from before. */
const OTHER_PRICE = say('otherPrice');
/**
 * A cutting plan: strips to cut, what comes from each, and the cloth or sheets to buy, drawn to scale. The cut list is the
 * `<table>` inside the element, or typed or pasted into the sheet. A long list is planned in the background; `result` has
 * `errors` until its plan is ready, and a `change` event tells when it is.
 *
 * @tagname quilt-cutting
 */
class QuiltCutting extends ListFace {
    static { this.properties = propertiesOf(cuttingFields); }
    /** What the list was cut from when the price was written, if the reader has changed that since. */
    #pricedFor;
    constructor() {
        super();
        this.calculator = {
            ...cutting,
            reckon: (input) => (isAsServed(this) ? reckon(input) : this.plans.reckon((plan) => reckon(input, plan))),
        };
        this.english = inEnglish(cutting$1);
        this.#said = [];
        this.oneWay = false;
    }
    get isAsWritten() {
        return (this.list ?? null) === this.getAttribute('list');
    }
    change(key, value) {
        if (key === 'price')
            this.#pricedFor = undefined;
        if (key === 'sheet')
            this.#pricedFor ??= this.sheet ?? '';
        super.change(key, value);
    }
    reckonInput() {
        const isOtherPrice = (this.#pricedFor ?? this.sheet ?? '') !== (this.sheet ?? '') && !isBlank(this.price);
        const surroundings = this.surroundings();
        return {
            ...super.reckonInput(),
            ...surroundings,
            caution: this.#cautions(surroundings.caution, isOtherPrice),
            ...(isOtherPrice && { price: undefined }),
            list: this.list ?? this.#written,
        };
    }
    #read;
    /** The texts in the author's own table. The list stays the same object while the table does. */
    get #written() {
        const { table } = this;
        if (table && this.#read?.from !== table)
            this.#read = { from: table, list: table.map((cells) => cells.map(({ text }) => text)) };
        return table && this.#read?.list;
    }
    #said;
    /** What the reader should know about this list. The array stays the same object while its content is the same. */
    #cautions(caution, isOtherPrice) {
        const cautions = [caution, isOtherPrice && OTHER_PRICE].filter(Boolean);
        const isSame = cautions.length === this.#said.length && cautions.every((one, at) => one === this.#said[at]);
        return isSame ? this.#said : (this.#said = cautions);
    }
}

export { QuiltCutting };
