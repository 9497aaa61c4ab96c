import { cutRows, writeCutRows, asNamed, isEmptyRow, isUnfinishedRow, CELLS, inWay, hasHead } from '../../calculators/cutting/cut-cells.js';
import { cutting } from '../../calculators/cutting/cutting.js';
import { reckon } from '../../calculators/cutting/reckon.js';
import { cuttingFields, say } from '../../calculators/cutting/shape.js';
import { propertiesOf } from '../../face/calculator.js';
import { blockOf, withBlock, isOfGrid, placeOf } from '../../face/grid.js';
import { GridFace } from '../../face/grid-face.js';
import { isAsServed } from '../../face/server.js';
import { cutting as cutting$1 } from '../../words/en/cutting.js';
import { inEnglish } from '../../words/en/english.js';
import { isAboutRow, isAboutCell } from './faults.js';
import { listStyles, rowOf, listGrid, textsOf } from './grid.js';

/** Fabric, piece, cut size, how many: so many cells has a line of a list without a head. */
const WHOLE = 4;
/** Whether a pasted text is a list with columns of its own. */
const isWholeList = (text, [, at]) => !text.includes('\t') ||
    (at === 0 && (hasHead(text) || blockOf(text).every(({ length }) => length === WHOLE)));
/** The rows without empty ones at the end. */
const withoutEnd = (texts) => texts.slice(0, texts.findLastIndex((row) => !isEmptyRow(rowOf(row))) + 1);
/**
 * A cutting plan: strips to cut, what comes from each, and the cloth or sheets to buy, drawn to scale. The cut list is the
 * `<table>` inside the element, or typed into the sheet, a row of cells for each piece. A long list is planned in the background; `result` has
 * `errors` until its plan is ready, and a `change` event tells when it is.
 *
 * @tagname quilt-cutting
 */
class QuiltCutting extends GridFace {
    static { this.styles = [...GridFace.styles, listStyles]; }
    static { this.properties = propertiesOf(cuttingFields); }
    constructor() {
        super();
        this.calculator = {
            ...cutting,
            reckon: (input) => (isAsServed(this) ? reckon(input) : this.plans.reckon((plan) => reckon(input, plan))),
        };
        this.english = inEnglish(cutting$1);
        this.gridKey = 'list';
        this.mostRows = 100;
        this.entersDown = true;
        this.oneWay = false;
    }
    /** The list's row has a row of cells for each piece. */
    grid(state) {
        const written = cutRows(state.text);
        const rows = this.liveRows?.map(rowOf) ?? (written && written.length <= this.mostRows ? written : undefined);
        const { entered, typeIn } = this;
        if (!rows)
            return undefined;
        const issue = this.#issue(this.said);
        const isWrong = (row, cell) => !!issue && isAboutCell(issue, rows, row, cell);
        return listGrid(state, { rows, fabrics: this.#fabricsIn(rows), isWrong, entered, typeIn });
    }
    writeGrid(rows) {
        return writeCutRows(rows.map(rowOf));
    }
    /** The name of a piece and the choice beside it say the same. */
    afterTyping(rows, [row, at]) {
        const cell = CELLS[at];
        const now = (typed) => cell === 'way' ? inWay(typed, typed.way ?? '') : cell === 'piece' ? asNamed(typed) : typed;
        const texts = rows.map((all, which) => (which === row ? textsOf(now(rowOf(all))) : all));
        return withoutEnd(texts);
    }
    /** A whole list has its own columns. Any other block of cells goes into the cells from this one on. */
    afterPasting(rows, place, text) {
        const list = isWholeList(text, place) ? cutRows(text) : undefined;
        const block = list?.map(textsOf) ?? blockOf(text);
        const [row] = place;
        const pasted = withBlock(rows, list ? [row, 0] : place, block);
        return withoutEnd(pasted.map((texts) => textsOf(asNamed(rowOf(texts)))));
    }
    /** Of the row that the reader is in, we do not say yet what it lacks. */
    isBegunRow(texts, row) {
        const rows = texts.map(rowOf);
        const shown = rows[row];
        const issue = this.#issue(this.outcome.reckoning.issues);
        return !!shown && !!issue && !isEmptyRow(shown) && isUnfinishedRow(shown) && isAboutRow(issue, rows, row);
    }
    #issue(issues) {
        return issues.find(({ input }) => input === this.gridKey);
    }
    kindOf(input) {
        const cell = isOfGrid(input) && CELLS[placeOf(input)[1]];
        return cell === 'width' || cell === 'length'
            ? 'length'
            : cell === 'count'
                ? 'count'
                : super.kindOf(input);
    }
    /** The fabrics of the worksheet and the letters that are in the list. Undefined if no fabric is declared. */
    #fabricsIn(rows) {
        const { names = {} } = this.flow?.values ?? {};
        const declared = Object.entries(names);
        if (!declared.length)
            return undefined;
        const fabrics = { '': this.teller.say(say('noFabric')) };
        for (const [letter, name] of declared)
            fabrics[letter] = name ? `${letter} · ${name}` : letter;
        for (const { fabric = '' } of rows)
            fabrics[fabric] ??= fabric;
        return fabrics;
    }
    get isAsWritten() {
        return (this.list ?? null) === this.getAttribute('list');
    }
    reckonInput() {
        return { ...super.reckonInput(), ...this.surroundings(), list: this.list ?? this.#written };
    }
    #read;
    /** The texts in the author's own table. The list stays the same object while the table does. */
    get #written() {
        const { table } = this;
        if (table && this.#read?.from !== table)
            this.#read = { from: table, list: table.map((cells) => cells.map(({ text }) => text)) };
        return table && this.#read?.list;
    }
}

export { QuiltCutting };
