import { html, isServer, nothing, type TemplateResult } from 'lit';
import { drawingStyles } from '../drawing/picture.js';
import { unbroken } from '../measure/format.js';
import type { Answer, Row } from '../reckon/answer.js';
import { entryLabel, LONGEST_LIST } from '../reckon/fields.js';
import { attributeOf } from './calculator.js';
import { action, cell, fractionKeys } from './cell.js';
import { cellsOf, csvOf, download, tabbedOf, type Cells } from './export.js';
import { CUTTER_CAUTION, cutList, figures, listing, MEASURE_FIRST, parted } from './lists.js';
import { printAlone } from './print.js';
import { isAsServed, isUnknown } from './server.js';
import { sheetStyles } from './styles.js';
import { Typed } from './typed.js';

/** So long after the last key the answer is announced. */
const PAUSE = 1000;

/**
 * The shared face of every calculator: the answer, the rows with their working, the drawing, the cut list. It reckons
 * again as the reader types, keeps what she typed where it is wrong, and leaves the last good answer marked stale.
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
 * @cssprop [--quilt-rule=1px solid] - Line between rows, as a border is written.
 * @cssprop [--quilt-edge=3px double] - The margin line, and that under the answer, as a border is written.
 * @cssprop [--quilt-cloth] - Colour that cloth is drawn in, as a wash. Default: the accent.
 */
export abstract class QuiltSheet<R extends Answer = Answer> extends Typed<R> {
  static override styles = [drawingStyles, sheetStyles];

  #open = false;
  /** What was announced last, and all that it was about; the notes under the answer then; and when the next is due. */
  #announced = '';
  #about = '';
  #notes: string[] = [];
  #due: ReturnType<typeof setTimeout> | undefined;
  /** What copying came to, and with which result. */
  #told: [unknown, string] | undefined;

  constructor() {
    super();
    if (!isServer) for (const type of ['input', 'change']) this.addEventListener(type, this.#acted);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.#due);
  }

  protected override render(): TemplateResult {
    if (isAsServed(this) && (isUnknown(this) || this.result.errors)) return html`<slot></slot>`;
    const { calculator } = this;
    const { title } = calculator;
    const { errors } = this.result;
    const rows = this.rows();
    const good = this.good;
    // In one order, whatever is written in them: a cell must not move while it is typed in.
    const refined = Object.keys(calculator.fields).flatMap((key) =>
      rows.filter(({ id, more }) => more && id === key),
    );
    const { said } = this;
    const open = this.#open || refined.some(({ id }) => said.some(({ input }) => input === id));
    const told = this.#told?.[0] === this.result && this.#told[1];
    const style = this.lengthStyle;
    const off = !!errors;
    return html`<section
      part="sheet"
      class="sheet ${errors && good ? 'stale' : ''} ${said[0] ? 'wrong' : ''} ${this.isOneOfMany ? 'many' : ''}"
      aria-label=${title}
      @keydown=${this.keyDown}
      @input=${this.typed}
      @change=${this.changed}
      @focusin=${this.focusIn}
      @focusout=${this.focusOut}
      @pointerdown=${this.pointed}
      @click=${this.clicked}
    >
      ${this.#answer(rows)}
      <table part="table">
        <thead>
          <tr>
            <th scope="col">${title}</th>
            <th scope="col">Value</th>
            <th scope="col">How it was got</th>
          </tr>
        </thead>
        <tbody>
          ${rows.filter((row) => !row.more).flatMap(this.#rowsOf)}
          ${
            refined[0] &&
            html`<tr class="refine">
            <td colspan="3">
              ${action(open ? 'Fewer settings' : `More: ${refined.map((row) => row.label.toLowerCase()).join(', ')}`, () => this.#fold(!open), { open })}
            </td>
          </tr>`
          }
          ${open ? refined.map(this.#row) : nothing}
        </tbody>
      </table>
      ${
        good &&
        html`<div>
        ${figures(calculator.draw(good, style))} ${cutList(good)}
        ${good.cuts[0] && html`<p>${CUTTER_CAUTION}</p>`}
        ${calculator
          .listings?.(good, style)
          .filter(({ toCut }) => toCut !== 'on paper')
          .map(listing)} ${this.more(good)}
      </div>`
      }
      <p>${MEASURE_FIRST}</p>
      <p class="actions">
        ${this.switchable ? action(`Show in ${style.units === 'in' ? 'centimetres' : 'inches'}`, this.switchUnits) : nothing}
        ${action('Copy table', this.#copy, { off })} ${action('Download CSV', this.#download, { off })} ${action('Print', this.#print, { off })}
        <span role="status" class=${told ? nothing : 'unseen'} .textContent=${told || this.#announced}></span>
      </p>
    </section>`;
  }

  /** What an element shows besides, under its lists. */
  protected more(_good: R): unknown {
    return nothing;
  }

  /** What stands before the answer, and the answer. */
  #headline(good: R): [string, string] {
    return (
      this.calculator.headline?.(good, this.lengthStyle) ?? [
        this.flow?.values['shared'] ? 'By itself' : 'Buy',
        good.buy.text,
      ]
    );
  }

  /** What stands under the answer. */
  #notesOf(good: R | undefined): string[] {
    const { said } = this;
    if (said[0])
      return [
        `Not reckoned${good ? ' again' : ''} yet: ${said.map((problem) => this.labelOf(this.cellOf(problem))).join(', ')}.`,
      ];
    return this.result.errors ? [] : [this.overStock ?? [], this.strayLock(), this.result.notes].flat();
  }

  #answer(rows: Row[]): TemplateResult {
    const good = this.good;
    const [lead, large] = good ? this.#headline(good) : [];
    return html`<div part="answer" class="answer">
      ${good && html`<p class="buy">${lead} <strong part="amount">${unbroken(large!)}</strong> ${good.cost?.text}</p> <p>${unbroken(good.summary)}</p>`}
      ${this.#notesOf(good).map((note) => html`<p class="note">${unbroken(note)}</p>`)}
      ${this.said.filter(({ input }) => !rows.some(({ id }) => id === input)).map(({ message }) => html`<p part="error" class="error">${message}</p>`)}
    </div>`;
  }

  /** The answer is announced once, when the reader pauses: not each figure on the way, nor what she did elsewhere. */
  #acted = ({ target }: Event): void => {
    if (target !== this) return;
    clearTimeout(this.#due);
    this.#due = setTimeout(this.#announce, PAUSE);
  };

  #announce = (): void => {
    const { result, said } = this;
    if (result.errors && !said[0]) return;
    const notes = this.#notesOf(this.good);
    const answer = result.errors
      ? said.map(({ message }) => message)
      : [`${this.#headline(result).join(' ')} ${result.cost?.text ?? ''}`.trim() + '.', result.summary];
    const about = [...answer, ...notes].join(' ');
    if (about === this.#about) return;
    this.#about = about;
    // What was announced with another answer is not said again.
    this.#announced = [...answer, ...notes.filter((note) => !this.#notes.includes(note))].join(' ');
    this.#notes = notes;
    this.requestUpdate();
  };

  /** A row for each entry, where each has a cell. */
  #apart = (row: Row): Row[] => {
    const { id } = row;
    const each = this.calculator.fields[id]?.each;
    return each
      ? this.entries(id).map((value, at) => ({
          ...row,
          id: at ? `${id}${at + 1}` : id,
          label: entryLabel(each, at),
          value,
        }))
      : [row];
  };

  /** A row as it is shown; where each entry of a list has a cell, so many, and one more to write the next in. */
  #rowsOf = (row: Row): TemplateResult[] => {
    const { id } = row;
    const each = this.calculator.fields[id]?.each;
    const rows = this.#apart(row);
    const at = rows.length;
    if (each && !this.off && !this.locks(attributeOf(id)) && at < LONGEST_LIST)
      rows.push({
        ...row,
        id: at ? `${id}${at + 1}` : id,
        label: entryLabel(each, at),
        value: '',
        how: at ? 'one more, if there is one' : row.how,
      });
    return rows.map(this.#row);
  };

  #row = ({ id, label, value, role, how, reckoned }: Row): TemplateResult => {
    const { field, key } = this.placeOf(id);
    const message = this.said.find((problem) => this.cellOf(problem) === id)?.message;
    const editing = this.editing?.id === id;
    const text = editing ? this.editing!.text : (message && this.measured?.[id]) || value;
    const locked = this.locks(attributeOf(key));
    const open = !this.off && (field ? !locked : role !== 'reckoned');
    const flows = field && (this.flow?.values[id] as string | undefined);
    const takesFractions = !field || /^(length|size)/.test(field.kind);
    const chosen =
      field && 'options' in field
        ? text
            .split(', ')
            .map((part) => field.options[part] ?? part)
            .join(', ')
        : text;
    const isOwn = (this.own[key] ?? undefined) !== undefined;
    const got = html`${
      role === 'measured' || (flows && isOwn)
        ? html`${field ? 'your own' : 'measured'} ${action(unbroken(`put back ${reckoned ?? flows}`), () => this.putBack(id), { off: this.off })}`
        : (flows && this.flow!.from[id]) ||
          unbroken(locked ? how.replace('measure yours', 'fixed on this page') : how)
    } ${field?.each && open && value ? action(`take ${parted(label).split(',')[0]!.toLowerCase()} away`, () => this.takeAway(id)) : nothing} ${message && html`<span part="error" class="error">${unbroken(message)}</span>`}`;
    // Several lines need the width of both columns.
    const wide = field?.lines;
    return html`<tr class="${role} ${this.marked.includes(id) ? 'marked' : ''} ${field?.each && !value ? 'next' : ''}">
      <th scope="row" part="label">${open ? html`<label for=${id}>${parted(label)}</label>` : parted(label)}</th>
      <td class="amount" colspan=${wide ? 2 : nothing}>
        ${
          open
            ? cell({ id, field, text, wrong: !!message && (!!text || isOwn) })
            : html`<span part="value" data-row=${id} tabindex="-1">${unbroken(chosen) || '–'}</span>`
        }
        ${editing && takesFractions ? fractionKeys(this.typeIn) : nothing}
        ${wide && html`<p part="how" class="how" id="how-${id}">${got}</p>`}
      </td>
      ${wide ? nothing : html`<td part="how" class="how" id="how-${id}">${got}</td>`}
    </tr>`;
  };

  #fold(open: boolean): void {
    this.#open = open;
    this.requestUpdate();
  }

  // Taking it away

  /** What is copied and downloaded. */
  protected cells(good: R): Cells {
    return cellsOf({ ...good, working: good.working.flatMap(this.#apart) });
  }

  #copy = async (): Promise<void> => {
    let words = 'Copied.';
    try {
      // Absent on a page without https.
      await navigator.clipboard.writeText(tabbedOf(this.cells(this.good!), this.lengthStyle.comma));
    } catch {
      words = 'This browser does not allow copying here; the CSV holds the same.';
    }
    this.#told = [this.result, words];
    this.requestUpdate();
  };

  #download = (): void =>
    download(
      `${this.calculator.title.toLowerCase()}.csv`,
      csvOf(this.cells(this.good!), this.lengthStyle.comma),
    );

  /** What is printed in place of the sheet. */
  protected paper?(good: R): TemplateResult;

  #print = (): void => printAlone(this.shadowRoot!, this.calculator.title, this.paper?.(this.good!));
}
