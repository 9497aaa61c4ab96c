import { cutting } from '../../calculators/cutting/cutting.js';
import { reckon } from '../../calculators/cutting/reckon.js';
import { say, cuttingFields } from '../../calculators/cutting/shape.js';
import { isBlank } from '../../ledger/field.js';
import { propertiesOf } from '../../face/calculator.js';
import { ReadingFace } from '../../face/planning-face.js';
import { tableOnServer, isAsServed } from '../../face/server.js';
import { cutting as cutting$1 } from '../../words/en/cutting.js';
import { inEnglish } from '../../words/en/english.js';

/** A note: the price was for what the list was cut from before. */
const OTHER_PRICE = say('otherPrice');
/** The cut list in the author's own table; of a table inside one of its cells only that it is there. */
const listIn = (element) => {
    const table = element.querySelector('table');
    return table
        ? [...table.rows].map(({ cells }) => [...cells].map((cell) => (cell.querySelector('table') ? '<table>' : cell.textContent)))
        : undefined;
};
/**
 * A cutting plan: strips to cut, what comes from each, and the cloth or sheets to buy, drawn to scale. The cut list is the
 * `<table>` inside the element, or typed or pasted into the sheet. A long list is planned in the background; `result` has
 * `errors` until its plan is ready, and a `change` event tells when it is.
 *
 * @tagname quilt-cutting
 */
class QuiltCutting extends ReadingFace {
    static { this.properties = propertiesOf(cuttingFields); }
    #written;
    /** What the list was cut from when the price was written, if the reader has changed that since. */
    #pricedFor;
    constructor() {
        super();
        this.#written = tableOnServer();
        this.calculator = {
            ...cutting,
            reckon: (input) => (isAsServed(this) ? reckon(input) : this.plans.reckon((plan) => reckon(input, plan))),
        };
        this.english = inEnglish(cutting$1);
        this.watched = { childList: true, characterData: true, subtree: true };
        this.#said = [];
        this.oneWay = false;
    }
    readInside() {
        this.#written = listIn(this);
        this.reckonAgain();
    }
    /** Whether the list is still the one that the page wrote. */
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
        const { widths, usualWidth, caution } = this.flow?.values ?? {};
        const isOtherPrice = (this.#pricedFor ?? this.sheet ?? '') !== (this.sheet ?? '') && !isBlank(this.price);
        return {
            ...super.reckonInput(),
            caution: this.#cautions(this.isAsWritten ? caution : undefined, isOtherPrice),
            ...(isOtherPrice && { price: undefined }),
            list: this.list ?? this.#written,
            ...(isBlank(this.fabricWidth) && { widths, usualWidth }),
        };
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
