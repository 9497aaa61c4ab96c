import { isBlank } from '../ledger/field.js';
import { say } from '../calculators/cutting/plan-shape.js';
import { ReadingFace } from './planning-face.js';
import { tableOnServer } from './server.js';
import { sayInFace } from '../words/face-sayings.js';
import { Teller } from '../words/teller.js';
import { CELL_ATTRIBUTES, tableIn } from './table.js';

/** A note: the price was for what the list was cut from before. */
const OTHER_PRICE = say('otherPrice');
/** A face whose pieces are in the table that its author wrote inside it, or in the cells of the page. */
class ListFace extends ReadingFace {
    constructor() {
        super(...arguments);
        /** The author's own table. */
        this.table = tableOnServer();
        this.watched = {
            childList: true,
            characterData: true,
            subtree: true,
            attributeFilter: [...CELL_ATTRIBUTES],
        };
        this.#said = [];
    }
    readInside() {
        this.table = tableIn(this);
        this.reckonAgain();
    }
    /** What the pieces were cut from when the price was written, if the reader has changed that since. */
    #pricedFor;
    change(key, value) {
        if (key === 'price')
            this.#pricedFor = undefined;
        if (key === 'sheet')
            this.#pricedFor ??= this.sheet ?? '';
        super.change(key, value);
    }
    /**
     * What a worksheet around it says of its fabrics, and of its pieces while they are as the page wrote them. A price that was for
     * something else does not count.
     */
    surroundings() {
        const { widths, usualWidth, caution, sheets, letters } = (this.flow?.values ?? {});
        const isOtherPrice = (this.#pricedFor ?? this.sheet ?? '') !== (this.sheet ?? '') && !isBlank(this.price);
        return {
            sheets,
            letters,
            caution: this.#cautions(this.isAsWritten ? caution : undefined, isOtherPrice),
            ...(isBlank(this.fabricWidth) && { widths, usualWidth }),
            ...(isOtherPrice && { price: undefined }),
        };
    }
    #inSheets;
    /** If fabrics are bought in sheets, a list without sheets of its own is not cut from cloth by length. */
    tellerNow() {
        const from = super.tellerNow();
        const { sheets } = (this.flow?.values ?? {});
        if (!Object.keys(sheets ?? {})[0])
            return from;
        if (this.#inSheets?.from !== from)
            this.#inSheets = { from, teller: sayingSheets(from) };
        return this.#inSheets.teller;
    }
    /** A week is of use only in a sew-along. */
    standing(settings) {
        return super.standing(settings.filter(({ id, value }) => id !== 'week' || value));
    }
    #said;
    /** What the reader should know about this list. The array stays the same object while its content is the same. */
    #cautions(caution, isOtherPrice) {
        const cautions = [caution, isOtherPrice && OTHER_PRICE].filter(Boolean);
        const isSame = cautions.length === this.#said.length && cautions.every((one, at) => one === this.#said[at]);
        return isSame ? this.#said : (this.#said = cautions);
    }
}
/** The same in words, with what the fabrics say in place of cloth by length. */
const sayingSheets = (t) => {
    const { words, style, lang } = t;
    const sheet = { ...words.options['sheet'], '': t.say(sayInFace('asFabrics')) };
    const hint = t.say(sayInFace('asFabricsHint', { hint: t.hint('sheet') }));
    return new Teller({ ...words, options: { ...words.options, sheet }, hints: { ...words.hints, sheet: hint } }, style, lang);
};

export { ListFace };
