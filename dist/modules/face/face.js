import { isServer, html, nothing } from 'lit';
import { textOf } from '../ledger/field.js';
import { LONGEST_LIST } from '../ledger/lengths.js';
import { isExact } from '../measure/exact.js';
import { unbroken } from '../measure/format.js';
import { sayInFace } from '../words/face-sayings.js';
import { attributeOf } from './calculator.js';
import { action } from './cell.js';
import { choicesOf } from './choices.js';
import { drawingStyles } from './drawing.js';
import { cellsOf, tabbedOf, download, csvOf } from './export.js';
import { Folding } from './folding.js';
import { figures, cutList, listing } from './lists.js';
import { printAlone } from './print.js';
import { entryOf } from './reckoned.js';
import { row } from './row.js';
import { loadSpreadsheet } from './spreadsheet.js';
import { saysHowMeant, saysForAll } from './said-once.js';
import { nameApart } from './naming.js';
import { isAsServed, isUnknown } from './server.js';
import { faceStyles } from './styles.js';

/** Time after the last key until the answer is announced. */
const PAUSE = 1000;
/**
 * The shared face of every calculator: the answer, the rows with their working, the drawing, the cut list. It reckons
 * again as the reader types. If her text is wrong, it keeps the text and marks the last good answer as out of date.
 *
 * @attr {boolean} disabled - No cell can be changed, and a form sends nothing of it.
 * @fires input - Something was typed; `result` already follows it.
 * @fires change - A cell was left with another value.
 * @csspart sheet - The whole sheet.
 * @csspart answer - The answer, and what belongs to it.
 * @csspart amount - The amount to buy, in the largest type.
 * @csspart table - The rows.
 * @csspart label - What a row is.
 * @csspart cell - A cell to type in.
 * @csspart value - A reckoned value.
 * @csspart how - How a value was got.
 * @csspart figure - What holds a drawing.
 * @csspart error - What is wrong in a row.
 * @csspart drawing - The drawing to scale.
 * @csspart list - The cut list and other lists.
 * @csspart action - Copy, CSV and print.
 * @cssprop [--quilt-accent=#a63d40] - Colour of the seams, the margin line and the focus.
 * @cssprop [--quilt-space=0.5rem] - Space inside and between rows.
 * @cssprop [--quilt-rule=1px solid] - Line between rows. Write it like `border` in CSS.
 * @cssprop [--quilt-edge=3px double] - The margin line and the line under the answer. Write it like `border` in CSS.
 * @cssprop [--quilt-cloth] - Colour that cloth is drawn in, as a wash. Default: the accent.
 */
class Face extends Folding {
    static { this.styles = [drawingStyles, faceStyles]; }
    /** The last announcement with its content, the notes under the answer at that time, and the time of the next one. */
    #announced = '';
    #about = '';
    #notes = [];
    #due;
    /** Whether copying worked, and for which outcome. */
    #told;
    constructor() {
        super();
        if (!isServer)
            for (const type of ['input', 'change'])
                this.addEventListener(type, this.#acted);
    }
    connectedCallback() {
        super.connectedCallback();
        saysHowMeant(this);
    }
    disconnectedCallback() {
        super.disconnectedCallback();
        clearTimeout(this.#due);
    }
    /** What it is called on the page and on paper. */
    get called() {
        return this.teller.words.title || this.english.title;
    }
    render() {
        const isServed = isAsServed(this);
        // A worksheet around it answers this event with the values that flow in, before we reckon.
        if (isServed && isUnknown(this))
            return html `<slot></slot>`;
        const { outcome, said, good, called } = this;
        const hasIssues = outcome.reckoning.issues.length > 0;
        if (isServed && hasIssues)
            return html `<slot></slot>`;
        const rows = this.rows();
        const pictures = good ? this.pictures(good.answer) : [];
        // The first picture stands beside the rows, unless it needs all their width.
        const beside = pictures.slice(0, pictures[0]?.largeFor === 'sizes' ? 0 : 1);
        const folds = [...this.ownFolds(), ...(good ? this.#folds(good, pictures.slice(beside.length)) : [])];
        const looks = [hasIssues && good && 'stale', said[0] && 'wrong', this.isOneOfMany && 'many'];
        return html `<section part="sheet" class="sheet ${looks.filter(Boolean).join(' ')}" aria-label=${nameApart(this, called)} lang=${this.teller.words.lang} @keydown=${this.keyDown} @input=${this.typed} @change=${this.changed} @focusin=${this.focusIn} @focusout=${this.focusOut} @pointerdown=${this.pointed} @click=${this.clicked}> ${this.#inSight(good)} <div class="spread"> ${this.#answer(rows)} ${good && figures(beside, good.t, this.swatches)} <div>${this.#table(called, rows)} ${this.#toggles(folds)}</div> </div> ${good && this.above(good)} ${(good ?? folds[0]) && this.#below(good, folds)} <p class=${saysHowMeant(this) ? nothing : 'folded'}>${this.#say('measureFirst')}</p> ${this.#actions(hasIssues)} </section>`;
    }
    /** The answer again, for the eye alone: it stays at the edge of a small screen while a cell far below it is edited. */
    #inSight(good) {
        if (!good || this.said[0])
            return nothing;
        const { lead, large } = this.#headline(good);
        return html `<p class="in-sight" aria-hidden="true"><span>${lead} <b>${unbroken(large)}</b></span></p>`;
    }
    #say(code) {
        return this.teller.say(sayInFace(code));
    }
    /** The rows, the refinements folded away under them. */
    #table(title, rows) {
        const { said, teller: t } = this;
        // The order never depends on the text: a cell must not move while somebody types in it.
        const refined = Object.keys(this.calculator.fields).flatMap((key) => rows.filter(({ id, more }) => more && id === key));
        const open = this.isOpen('settings') || refined.some(({ id }) => said.some(({ input }) => input === id));
        const settings = [...rows.filter((row) => !row.more && this.isSetting(row)), ...refined];
        const unfold = t.say(sayInFace(open ? 'hideSettings' : 'changeSettings'));
        return html `<table part="table"> <thead> <tr> <th scope="col">${title}</th> <th scope="col">${this.#say('valueHead')}</th> <th scope="col" class=${this.isOpen('working') ? nothing : 'folded'}>${this.#say('howHead')}</th> </tr> </thead> <tbody> ${rows.filter((row) => !row.more).flatMap(this.#rowsOf)} ${settings[0] &&
            html `<tr class="refine"> <td colspan="3"> ${action(unfold, () => this.setOpen('settings', !open), { open })} ${open ? nothing : unbroken(t.say(sayInFace('standingSettings', this.standing(settings))))} </td> </tr>`} ${open ? refined.map(this.#row) : nothing} </tbody> </table>`;
    }
    /** What is folded away under the rows: other pictures, what to cut and other lists, each with its caption. */
    #folds({ answer, t }, others) {
        const { cuts } = answer;
        const lists = this.lists(answer).filter(({ toCut }) => toCut !== 'paper');
        const saysCaution = saysForAll(this, 'blades', !!cuts[0] && (!this.foldsLists || this.isOpen('cutCaption')));
        const caution = html `<p class=${saysCaution ? nothing : 'folded'}>${t.say(sayInFace('cutterCaution'))}</p>`;
        return [
            ...(others[0]
                ? [
                    {
                        caption: sayInFace('otherPictures', { count: others.length }),
                        shown: [figures(others, t, this.swatches)],
                    },
                ]
                : []),
            ...(cuts[0] ? [{ caption: sayInFace('cutCaption'), shown: [cutList(answer, t), caution] }] : []),
            ...lists.map((list) => ({ caption: list.caption, shown: [listing(list, t)] })),
        ];
    }
    /** What opens the working and the lists. */
    #toggles(folds) {
        const { teller: t } = this;
        const working = this.isOpen('working');
        const shut = this.foldsLists ? folds.filter(({ isOpen }) => !isOpen) : [];
        return html `<p class="actions toggles"> ${action(t.say(sayInFace(working ? 'hideWorking' : 'showWorking')), () => this.setOpen('working', !working), { open: working })} ${shut.map(({ caption: { code, values } }) => {
            const open = this.isOpen(code);
            return action(t.say({ code, values }), () => this.setOpen(code, !open), { open });
        })} </p>`;
    }
    /** What stands under the rows. */
    #below(good, folds) {
        const isShown = (code) => !this.foldsLists || this.isOpen(code);
        return html `<div> ${folds.map(({ caption: { code }, shown, isOpen }) => html `<div class=${isOpen || isShown(code) ? nothing : 'folded'}>${shown}</div>`)} ${good && this.more(good)} </div>`;
    }
    #actions(off) {
        const { teller: t } = this;
        const told = this.#told?.[0] === this.outcome && this.#told[1];
        const open = this.isOpen('takeAlong');
        const units = this.lengthStyle.units === 'in' ? 'showInCentimetres' : 'showInInches';
        return html `<p class="actions"> ${this.switchable ? action(t.say(sayInFace(units)), this.switchUnits) : nothing} ${action(t.say(sayInFace('print')), this.#print, { off })} ${action(t.say(sayInFace('takeAlong')), () => this.setOpen('takeAlong', !open), { off, open })} ${open && !off
            ? html `${action(t.say(sayInFace('copyTable')), this.#copy)} ${action(t.say(sayInFace('downloadCsv')), this.#download)} ${action(t.say(sayInFace('downloadSpreadsheet')), this.#spreadsheet)}`
            : nothing} <span role="status" class=${told ? nothing : 'unseen'} .textContent=${told || this.#announced}></span> </p>`;
    }
    /** The lists under the drawing. */
    lists(answer) {
        return this.calculator.lists?.(answer, this.letters) ?? [];
    }
    /** Its drawings. */
    pictures(answer) {
        return this.calculator.draw(answer, this.letters);
    }
    /** The swatches of the worksheet's fabrics, by letter. */
    get swatches() {
        return this.flow?.values['swatches'];
    }
    /** The letters of the fabrics that it is cut from, as its worksheet reads them, or as they are written. */
    get letters() {
        const { letters } = this.flow?.values ?? {};
        return Array.isArray(letters) ? letters.map(textOf) : (this.fabric?.match(/[^\s,]+/g) ?? []);
    }
    /** Further content of an element, above its lists. */
    above(_good) {
        return nothing;
    }
    /** Lists of an element's own, which need no answer. */
    ownFolds() {
        return [];
    }
    /** Further content of an element, under its lists. */
    more(_good) {
        return nothing;
    }
    /** What a calculator says in large type in place of what to buy, with its lead. */
    ownHeadline({ answer, t }) {
        const own = this.calculator.headline?.(answer);
        return own && { lead: t.say(own.lead), large: t.say(own.large) };
    }
    /** The answer in large type, with its lead. */
    #headline(good) {
        const { answer, t } = good;
        const own = this.ownHeadline(good);
        if (own)
            return own;
        const lead = sayInFace(this.flow?.values['shared'] ? 'byItselfLead' : 'buyLead');
        return { lead: t.say(lead), large: t.bought(answer.buy) };
    }
    /** The sentence and the notes under the answer. */
    #notesOf(good) {
        const { said } = this;
        if (said[0]) {
            const inputs = said.map((issue) => this.labelOf(this.cellOf(issue)));
            return [sayInFace('notReckonedYet', { inputs, hasAnswer: !!good })];
        }
        const { issues, notes } = this.outcome.reckoning;
        return issues.length ? [] : [this.overStock ?? [], this.strayLock(), notes].flat();
    }
    /** What the reader can do about a note, in the note itself. */
    under(_note) {
        return nothing;
    }
    #answer(rows) {
        const { good, teller: t } = this;
        const { lead, large } = good ? this.#headline(good) : { lead: '', large: '' };
        const strays = this.said.filter(({ input }) => !rows.some(({ id }) => id === input));
        return html `<div part="answer" class="answer"> ${good && html `<p class="buy">${lead} <strong part="amount">${unbroken(large)}</strong> ${good.result.cost?.text}</p> <p>${unbroken(good.t.say(good.answer.summary))}</p>`} ${this.#notesOf(good).map((note) => html `<p class="note">${unbroken(t.say(note))} ${this.under(note)}</p>`)} ${strays.map((issue) => html `<p part="error" class="error">${t.say(issue)}</p>`)} </div>`;
    }
    /** Announces the answer once, when the reader pauses. It does not announce each digit, or changes elsewhere. */
    #acted = ({ target }) => {
        if (target !== this)
            return;
        clearTimeout(this.#due);
        this.#due = setTimeout(this.#announce, PAUSE);
    };
    #announce = () => {
        const { outcome, said, good, teller: t } = this;
        const { issues, own } = outcome.reckoning;
        if (issues.length && !said[0])
            return;
        const notes = this.#notesOf(good).map((note) => t.say(note));
        const answer = own && good
            ? [
                t.say(sayInFace('announced', { ...this.#headline(good), cost: good.result.cost?.text ?? '' })),
                t.say(own.summary),
            ]
            : said.map((issue) => t.say(issue));
        const about = [...answer, ...notes].join(' ');
        if (about === this.#about)
            return;
        this.#about = about;
        // A note that was announced with another answer is not announced again.
        this.#announced = [...answer, ...notes.filter((note) => !this.#notes.includes(note))].join(' ');
        this.#notes = notes;
        this.requestUpdate();
    };
    /** A row for each entry, if each entry has a cell. */
    #apart = (row) => {
        const { id } = row;
        return this.calculator.fields[id]?.each
            ? this.entries(id).map((value, at) => ({
                ...row,
                id: at ? `${id}${at + 1}` : id,
                label: this.teller.label(entryOf(id, at)),
                value,
            }))
            : [row];
    };
    /** A row on the page. If each entry of a list has a cell, a row for each, and one more for the next entry. */
    #rowsOf = (row) => {
        const { id } = row;
        // What holds for all of them is said once.
        const rows = this.#apart(row).map((one, place) => (place ? { ...one, how: '' } : one));
        const at = rows.length;
        const isOpen = !this.off && !this.locks(attributeOf(id)) && at < LONGEST_LIST;
        if (this.calculator.fields[id]?.each && isOpen)
            rows.push({
                ...row,
                id: at ? `${id}${at + 1}` : id,
                label: this.teller.label(entryOf(id, at)),
                value: '',
                how: at ? this.teller.say(sayInFace('oneMore')) : row.how,
            });
        return rows.map(this.#row);
    };
    /** How a row was got: where it flows from, or that the page has locked it. */
    #howOf({ id, how }, isLocked) {
        const { teller: t } = this;
        const source = this.flow?.values[id] !== undefined && this.flow.from[id];
        if (source)
            return t.say(source);
        return (isLocked && t.words.lockedHints[id]) || how;
    }
    /** A value that flows in from the worksheet, as it would be typed. */
    #flowing(value) {
        return isExact(value) ? this.teller.typed(value) : textOf(value);
    }
    #row = (shown) => {
        const { id, value, code, role, reckoned } = shown;
        const { teller: t, off } = this;
        const { field, key, at } = this.placeOf(id);
        const issue = this.said.find((issue) => this.cellOf(issue) === id);
        const editing = this.editing?.id === id ? this.editing : undefined;
        const text = editing ? editing.text : (issue && this.measured?.[id]) || (code ?? value);
        const isLocked = this.locks(attributeOf(key));
        const isOpen = !off && (field ? !isLocked : role !== 'reckoned');
        const flows = field && this.flow?.values[id];
        const isOwn = (this.own[key] ?? undefined) !== undefined;
        const hasOwn = role === 'measured' || (!!flows && isOwn);
        return row({
            ...shown,
            field,
            text,
            words: code === undefined ? text : value,
            choices: choicesOf(field, key, text, t),
            how: this.#howOf(shown, isLocked),
            message: issue && t.say(issue),
            isOpen,
            isMarked: this.marked.includes(id),
            isEdited: !!editing,
            isWrong: !!issue && (!!text || isOwn),
            isNext: !!field?.each && !value,
            isOwn: this.writesOwn.has(id) && !(text && field?.offered?.in.includes(text)),
            isFolded: this.isFolded(shown),
            instead: hasOwn ? (reckoned ?? this.#flowing(flows)) : undefined,
            takeAway: field?.each && isOpen && value ? t.entryName(key, at + 1) : undefined,
            off,
            t,
            putBack: () => this.putBack(id),
            take: () => this.takeAway(id),
            typeIn: this.typeIn,
        });
    };
    // Taking it away
    /** What is copied and downloaded. */
    cells({ answer, result, t }) {
        return cellsOf(result.working.flatMap(this.#apart), answer, t);
    }
    #copy = async () => {
        const { good } = this;
        if (!good)
            return;
        let says = sayInFace('copied');
        try {
            // Absent on a page without https.
            await navigator.clipboard.writeText(tabbedOf(this.cells(good), this.lengthStyle.comma));
        }
        catch {
            says = sayInFace('cannotCopy');
        }
        this.report(says);
    };
    /** Says whether a button worked, until the next answer. */
    report(says) {
        this.#told = [this.outcome, this.teller.say(says)];
        this.requestUpdate();
    }
    #download = () => {
        const { good } = this;
        if (good)
            download(this.#fileName('csv'), csvOf(this.cells(good), this.lengthStyle.comma), { type: 'text/csv' });
    };
    #spreadsheet = async () => {
        const { good, calculator } = this;
        if (!good)
            return;
        const name = this.#fileName('xlsx');
        try {
            const { spreadsheetFile } = await loadSpreadsheet();
            const file = await spreadsheetFile(good, calculator.fields, this.sheetLists?.(good));
            download(name, file, { type: file.type });
        }
        catch {
            // Late loading can fail: the page may be offline by now.
            this.report(sayInFace('cannotLoad'));
        }
    };
    #fileName(kind) {
        return `${this.called.toLowerCase()}.${kind}`;
    }
    #print = async () => {
        if (this.readyForPaper)
            await this.readyForPaper();
        const { good, shadowRoot } = this;
        if (good && shadowRoot)
            printAlone(shadowRoot, this.called, this.paper?.(good));
    };
}

export { Face };
