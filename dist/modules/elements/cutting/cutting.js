import { isServer } from 'lit';
import { drawCutting } from '../../drawing/cutting.js';
import { cuttingFields, reckonCutting } from '../../reckon/cutting.js';
import { BackgroundPlans } from '../../sheet/background-plans.js';
import { propertiesOf } from '../../sheet/calculator.js';
import { isAsServed } from '../../sheet/server.js';
import { QuiltSheet } from '../../sheet/sheet.js';
import { stripList } from './strips.js';

/** The cut list in the author's own table; of a table inside one of its cells only that it is there. */
const listIn = (element) => {
    const table = element.querySelector('table');
    return table
        ? [...table.rows].map(({ cells }) => [...cells].map((cell) => (cell.querySelector('table') ? 'a table in a cell' : cell.textContent)))
        : undefined;
};
/**
 * A cutting plan: strips to cut, what comes from each, and the cloth or sheets to buy, drawn to scale. The cut list is the
 * `<table>` inside the element, or typed or pasted into the sheet. A long list is planned in the background; `result` has
 * `errors` until its plan is ready, and a `change` event tells when it is.
 *
 * @tagname quilt-cutting
 */
class QuiltCutting extends QuiltSheet {
    constructor() {
        super(...arguments);
        this.#plans = new BackgroundPlans((ready) => {
            this.reckonAgain();
            if (ready)
                this.tell('change');
        });
        this.calculator = {
            title: 'Cutting plan',
            fields: cuttingFields,
            reckon: (input) => isAsServed(this) ? reckonCutting(input) : this.#plans.reckon((plan) => reckonCutting(input, plan)),
            draw: drawCutting,
            listings: ({ fabrics }, style) => [stripList(fabrics, style)],
            takes: ({ fabrics }, letters) => fabrics.map(({ fabric, need, sheets, buy, cost, width, pieces }) => {
                const cuts = pieces.map((cut) => ({ ...cut, piece: cut.piece.replace(`${fabric} · `, '') }));
                return {
                    fabric: fabric || (letters[0] ?? ''),
                    need,
                    width,
                    cuts,
                    pieces: cuts.map((cut) => ({ ...cut, turn: !this.oneWay })),
                    ...(sheets && { item: buy.text, cost }),
                };
            }),
        };
    }
    static { this.properties = propertiesOf(cuttingFields); }
    #plans;
    #written;
    #watch;
    connectedCallback() {
        super.connectedCallback();
        if (isServer)
            return;
        this.#watch = new MutationObserver(() => this.#read());
        this.#watch.observe(this, { childList: true, characterData: true, subtree: true });
        this.#read();
    }
    disconnectedCallback() {
        super.disconnectedCallback();
        this.#watch?.disconnect();
        this.#plans.stop();
    }
    #read() {
        this.#written = listIn(this);
        this.reckonAgain();
    }
    reckonInput() {
        return {
            ...super.reckonInput(),
            list: this.list ?? (isAsServed(this) ? undefined : this.#written),
            widths: this.fabricWidth ? undefined : this.flow?.values['widths'],
        };
    }
}

export { QuiltCutting };
