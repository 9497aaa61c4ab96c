import { isServer, html } from 'lit';
import { drawPlans } from '../../calculators/cutting/draw.js';
import { stripList } from '../../ledger/strip-list.js';
import { isBlank } from '../../ledger/field.js';
import { isExact } from '../../measure/exact.js';
import { propertiesOf } from '../../face/calculator.js';
import { spreadsheetCell } from '../../face/export.js';
import { figures, listing } from '../../face/lists.js';
import { ReadingFace } from '../../face/planning-face.js';
import { answerOnServer, insideOnServer } from '../../face/server.js';
import { isCrowd } from '../../face/turns.js';
import { worksheetCells } from '../../workbook/cells.js';
import { Fabrics } from '../../workbook/fabrics.js';
import { flow, isSame } from '../../workbook/flow.js';
import { gather } from '../../workbook/gather.js';
import { NOTHING } from '../../workbook/input.js';
import { reckon } from '../../workbook/reckon.js';
import { say } from '../../workbook/sayings.js';
import { worksheetFields } from '../../workbook/shape.js';
import { headline, shopping } from '../../workbook/shopping.js';
import { inEnglish } from '../../words/en/english.js';
import { worksheet } from '../../words/en/worksheet.js';
import { Teller } from '../../words/teller.js';
import { contentOf, passedOn } from './content.js';
import { flowingPart, partOnPage, isCutList, giveTo } from './parts.js';
import { requirementSheet, keyOf, isColour } from './paper.js';
import { worksheetStyles } from './styles.js';

/** A part or a fabric whose element is defined. Others are left out until they are. */
const isPart = (element) => 'outcome' in element;
const isFabric = (element) => 'swatch' in element;
/** The worksheet that gave a part its sizes last. */
const givenBy = new WeakMap();
/**
 * One quilt: the size of the top flows to the borders, and the size with borders to backing, binding and batting. The cloth of all
 * parts comes together in one shopping list, with prices, kits and a fabric key. An attribute on a part counts before what flows.
 *
 * @tagname quilt-worksheet
 * @slot - The quilt's parts and fabrics, in any order and any markup.
 */
class QuiltWorksheet extends ReadingFace {
    static { this.styles = [...ReadingFace.styles, worksheetStyles]; }
    static { this.properties = propertiesOf(worksheetFields); }
    /** What the parts and the fabrics say. */
    #gathered;
    /** Parts that sizes were given to. */
    #given;
    #pieces;
    #swatches;
    #size;
    /** Whether the reader changed the blocks but not their cut list. */
    #outgrown;
    /** Whether a part has drawn itself since this was last read. */
    #isUnread;
    constructor() {
        super();
        /** What the parts and the fabrics say. */
        this.#gathered = NOTHING;
        /** Parts that sizes were given to. */
        this.#given = [];
        this.#pieces = [];
        this.#swatches = new Map();
        /** Whether a part has drawn itself since this was last read. */
        this.#isUnread = false;
        this.calculator = {
            name: 'worksheet',
            fields: worksheetFields,
            reckon: (input) => isServer
                ? reckon(input, this.#gathered)
                : this.plans.reckon((plan) => reckon(input, this.#gathered, plan)),
            headline,
            draw: ({ fabrics }) => drawPlans(fabrics.flatMap(({ together }) => together ?? [])),
            lists: (answer) => [shopping(answer), ...joint(answer)],
        };
        this.english = inEnglish(worksheet);
        // Its list is what it is for.
        this.foldsLists = false;
        /**
         * What somebody types settles at once, so that listeners of the event see it. If parts have drawn themselves, it waits until the
         * others of the same turn are drawn too.
         */
        this.#heard = ({ target, type }) => {
            if (target === this)
                return;
            if (type !== 'reckoned')
                this.readInside();
            else if (!this.#isUnread) {
                this.#isUnread = true;
                queueMicrotask(() => this.settle());
            }
        };
        this.paper = (good) => {
            const { answer, t } = good;
            const pictures = figures(this.calculator.draw(answer), t);
            return requirementSheet(good, {
                parts: this.#given,
                pieces: this.#pieces,
                key: this.more(good),
                joint: [...pictures, ...joint(answer).map((list) => listing(list, t))],
                size: this.#size ? `${t.size(this.#size)}.` : '',
            });
        };
        answerOnServer(this, (first) => {
            first.readInside();
            // The worksheet needs their words.
            this.#given = first.#given;
            this.#gathered = first.#gathered;
            this.#swatches = first.#swatches;
        });
    }
    connectedCallback() {
        super.connectedCallback();
        if (isServer)
            return;
        for (const type of ['input', 'change', 'reckoned', 'slotchange'])
            this.addEventListener(type, this.#heard);
    }
    /**
     * What somebody types settles at once, so that listeners of the event see it. If parts have drawn themselves, it waits until the
     * others of the same turn are drawn too.
     */
    #heard;
    get switchable() {
        return super.switchable && [...this.#parts, ...this.#fabrics].every(({ price }) => isBlank(price));
    }
    willUpdate() {
        if (!isServer)
            this.readInside();
    }
    /** An unfinished worksheet is valid if the author left something out, but not if the reader has to write something. */
    fault() {
        const outgrown = this.#outgrown;
        return super.fault() ?? (outgrown && { flag: 'badInput', message: this.teller.say(outgrown) });
    }
    // This many parts are reckoned only after the page had its turn.
    putsOff() {
        return (this.#isUnread = !this.hasUpdated && !this.form && isCrowd());
    }
    /** Gives the parts their sizes, if something has changed. */
    settle() {
        if (this.#isUnread)
            this.readInside();
    }
    reckonInput() {
        this.settle();
        return { ...super.reckonInput(), gathered: this.#gathered };
    }
    /** Those in this worksheet, without those of a worksheet inside it. */
    get #content() {
        return isServer ? insideOnServer(this) : contentOf(this);
    }
    get #parts() {
        return this.#content.filter(isPart);
    }
    get #fabrics() {
        return this.#content.filter(isFabric);
    }
    /** Lets the sizes flow through the parts, and gathers what they take. */
    readInside() {
        this.#isUnread = false;
        if (!isServer)
            passedOn(this).forEach((passed) => this.watch(passed));
        const parts = this.#parts;
        const fabrics = new Fabrics(this.#fabrics, this.fabricWidth, this.lengthStyle);
        const { size, caution } = flow(this.#source, parts.map(flowingPart), fabrics, giveTo);
        this.#takeOn(parts);
        const { width, length } = size;
        this.#size = isExact(width) && isExact(length) ? { width, length } : undefined;
        const { gathered, pieces } = gather(parts.map(partOnPage), fabrics, isColour);
        this.#pieces = pieces;
        const lists = parts.filter(isCutList);
        this.#outgrown = lists.some(({ isAsWritten }) => isAsWritten) ? caution : undefined;
        if (caution && (this.#outgrown || !lists[0]))
            gathered.unfinished.push(caution);
        const { swatches } = fabrics;
        if (isSame([gathered, ...swatches], [this.#gathered, ...this.#swatches]))
            return;
        this.#swatches = swatches;
        this.#gathered = gathered;
        this.requestUpdate();
        // A listener may ask the form for its value at once.
        if (this.form)
            this.send();
    }
    /** Its own inputs, for its parts. */
    get #source() {
        const { width, length, seam, units, shown, shrinkage, increment, currency } = this;
        return { width, length, seam, units, shown, shrinkage, increment, currency };
    }
    /** Takes these as its parts. A part that has left, and is in no other worksheet, loses its sizes. */
    #takeOn(parts) {
        parts.forEach((part) => givenBy.set(part, this));
        for (const part of this.#given)
            if (!parts.includes(part) && givenBy.get(part) === this)
                part.flow = undefined;
        this.#given = parts;
    }
    /** The teller, with the words of its parts, because it says what they say. */
    get teller() {
        const own = super.teller;
        const others = Object.fromEntries(this.#given.map(({ calculator, teller }) => [calculator.name, teller.words]));
        const isKnown = this.#spoken?.style === own.style && this.#spoken.lang === own.lang;
        if (this.#spoken && isKnown && isSame(this.#spoken.words.others, others))
            return this.#spoken;
        return (this.#spoken = new Teller({ ...own.words, others }, own.style, own.lang));
    }
    #spoken;
    render() {
        return html `<slot></slot>${super.render()}`;
    }
    more(good) {
        return keyOf(good, this.#swatches);
    }
    cells(good) {
        const cells = [...this.sheetLists(good), ...super.cells(good)];
        const widest = Math.max(...cells.map((row) => row.length));
        return cells.map((row) => [...row, ...Array(widest - row.length).fill('')]);
    }
    /** The shopping list and the cut list. */
    sheetLists({ answer, reckoning, t }) {
        const list = worksheetCells(answer, reckoning.notes, this.#pieces);
        return list.map((row) => row.map((cell) => spreadsheetCell(cell, t)));
    }
}
/** The strips of parts that are laid out together. */
const joint = ({ fabrics }) => {
    const plans = fabrics.flatMap(({ together }) => together ?? []);
    const strips = plans.map(({ fabric, strips }) => ({ of: fabric, strips }));
    return plans.length ? [stripList(strips, say('fabricHead'), say('stripsTogether'))] : [];
};

export { QuiltWorksheet };
