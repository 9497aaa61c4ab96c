import { drawCutting } from '../../drawing/cutting.js';
import { cuttingFields, reckonCutting } from '../../reckon/cutting.js';
import { isBlank } from '../../reckon/fields.js';
import { BackgroundSheet } from '../../sheet/background-sheet.js';
import { propertiesOf } from '../../sheet/calculator.js';
import { tableOnServer, isAsServed } from '../../sheet/server.js';
import { stripList } from './strips.js';

/** The cut list in the author's own table; of a table inside one of its cells only that it is there. */
const listIn = (element) => {
    const table = element.querySelector('table');
    return table
        ? [...table.rows].map(({ cells }) => [...cells].map((cell) => (cell.querySelector('table') ? 'a table in a cell' : cell.textContent)))
        : undefined;
};
const OTHER_PRICE = 'The price was of what it was cut from before, and is left out. Write what a yard, a metre or a sheet costs now, like 12.50.';
/**
 * A cutting plan: strips to cut, what comes from each, and the cloth or sheets to buy, drawn to scale. The cut list is the
 * `<table>` inside the element, or typed or pasted into the sheet. A long list is planned in the background; `result` has
 * `errors` until its plan is ready, and a `change` event tells when it is.
 *
 * @tagname quilt-cutting
 */
class QuiltCutting extends BackgroundSheet {
    static { this.properties = propertiesOf(cuttingFields); }
    #written;
    /** What it was cut from when its price was written, where the reader changed that since. */
    #pricedFor;
    constructor() {
        super();
        this.#written = tableOnServer();
        this.calculator = {
            title: 'Cutting plan',
            fields: cuttingFields,
            reckon: (input) => isAsServed(this) ? reckonCutting(input) : this.plans.reckon((plan) => reckonCutting(input, plan)),
            draw: drawCutting,
            byPiece: () => !!this.sheet,
            listings: ({ fabrics }, style) => [stripList(fabrics, style)],
            takes: ({ fabrics }, letters) => fabrics.map(({ fabric, need, sheets, buy, cost, width, sold, pieces }) => {
                const prefix = fabric && `${fabric} · `;
                const cuts = pieces.map((cut) => ({ ...cut, piece: cut.piece.slice(prefix.length) }));
                return {
                    fabric: fabric || (letters[0] ?? ''),
                    need,
                    width,
                    sold,
                    cuts,
                    pieces: cuts.map((cut) => ({ ...cut, turn: !this.oneWay })),
                    ...(sheets && { item: buy.text, cost }),
                };
            }),
        };
        this.watched = { childList: true, characterData: true, subtree: true };
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
        const { widths, usualWidth, caution = '' } = this.flow?.values ?? {};
        const isOtherPrice = (this.#pricedFor ?? this.sheet ?? '') !== (this.sheet ?? '') && !isBlank(this.price);
        return {
            ...super.reckonInput(),
            caution: `${this.isAsWritten ? caution : ''} ${isOtherPrice ? OTHER_PRICE : ''}`.trim(),
            ...(isOtherPrice && { price: undefined }),
            list: this.list ?? this.#written,
            ...(isBlank(this.fabricWidth) && { widths, usualWidth }),
        };
    }
}

export { QuiltCutting };
