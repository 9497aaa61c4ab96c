import { html, isServer, nothing, type PropertyDeclarations, type TemplateResult } from 'lit';
import { drawingStyles } from '../drawing/picture.js';
import { exact, upTo } from '../measure/exact.js';
import { decimal, unbroken, type Style } from '../measure/format.js';
import { inUnit, quoted } from '../measure/parse.js';
import { unitsOr, writesComma, type Units } from '../measure/units.js';
import type { Answer, Input, Problem, Refused, Row } from '../reckon/book.js';
import { isBlank, missing, textOf } from '../reckon/fields.js';
import { attributeOf, type Calculator, type Flow } from './calculator.js';
import { action, cell, fractionKeys } from './cell.js';
import { CUTTER_CAUTION, cutList, figures, listing, MEASURE_FIRST } from './lists.js';
import { cellsOf, csvOf, download, tabbedOf, type Cells } from './export.js';
import { dress } from './dress.js';
import { FormField, type Fault } from './form-field.js';
import { languageAt } from './language.js';
import { nudged } from './nudge.js';
import { printAlone } from './print.js';
import { isAsServed, isInWorksheet, isTakenOver, takeOver } from './server.js';
import { overStock } from './stock.js';
import { sheetStyles } from './styles.js';

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
export abstract class QuiltSheet<R extends Answer = Answer> extends FormField {
  static override styles = [drawingStyles, sheetStyles];
  static override properties: PropertyDeclarations = {
    units: { reflect: true },
    lock: { reflect: true },
    fabric: { reflect: true },
    shown: { attribute: false },
    max: {},
    measured: { attribute: false },
    flow: { attribute: false },
  };

  /** What bare numbers are in and answers are shown in: `in` or `cm`. Default `in`. */
  declare units: 'in' | 'cm' | undefined;
  /** What the reader sees lengths in, `in` or `cm`, where she switched. Default: `units`. */
  declare shown: Units | undefined;
  /** Inputs the reader may not change: attribute names with spaces between. Default none. */
  declare lock: string | undefined;
  /** The letter of the fabric this part is cut from. Default none. */
  declare fabric: string | undefined;
  /**
   * The shop's stock: a length (`6 yd`, `5 m`), or a number in the unit of the amount to buy: yards, metres, packages, fat
   * quarters. An amount above it is shown with a sentence, and is not valid in a form. Default none.
   */
  declare max: string | number | undefined;
  /** Values typed over reckoned rows, by the row's id. Default none. */
  declare measured: Record<string, string> | undefined;
  /** What the worksheet around it gives; an own attribute wins. Set by the worksheet. */
  declare flow: Flow | undefined;
  /** Finished width. A length as people write it, or a number of inches. */
  declare width: string | number | undefined;
  /** Finished length. A length as people write it, or a number of inches. */
  declare length: string | number | undefined;
  /** Usable width of the cloth, selvages off. Default `40 in`. */
  declare fabricWidth: string | number | undefined;
  /** Seam allowance. The default is the calculator's. */
  declare seam: string | number | undefined;
  /** How much the material shrinks in the wash, in percent. Default 0. */
  declare shrinkage: string | number | undefined;
  /** The step the shop cuts in: `1/8 yd`, `1/4 yd`, `thirds`, `10 cm`. Default `1/8 yd`, or `10 cm` in metric. */
  declare increment: string | undefined;
  /** Price of one yard or metre. Default none. */
  declare price: string | number | undefined;
  /** Currency, ISO 4217: `EUR`. Default none: prices are bare numbers. */
  declare currency: string | undefined;

  /** What is reckoned and drawn here. */
  abstract readonly calculator: Calculator<R>;

  #input: Input | undefined;
  #result: R | Refused | undefined;
  #good: R | undefined;
  /** The cell being typed in: what stands there; what stood there when it was entered, as text and as it was set. */
  #editing:
    | {
        id: string;
        text: string;
        before: string;
        own: unknown;
        good: R | undefined;
      }
    | undefined;
  #marked: string[] = [];
  /** The cell that the pointer went down on while it had not the focus. */
  #pressed: EventTarget | null = null;
  #open = false;
  #told = '';
  /** The reckoned result: plain JSON, lengths as exact inches. With `errors` and no `buy` where an input is wrong. */
  get result(): R | Refused {
    const input = this.reckonInput();
    if (!this.#result || !sameInput(input, this.#input)) {
      this.#input = input;
      this.#told = '';
      this.#result = this.calculator.reckon(input);
      if (!this.#result.errors) this.#good = this.#result;
      // What is half typed is no answer to go back to.
      else if (this.#editing) this.#good = this.#editing.good;
    }
    return this.#result;
  }

  /** Reckons again though no input changed: what it depends on did. */
  protected reckonAgain(): void {
    this.#input = undefined;
    this.requestUpdate();
    this.send();
  }

  /** What a form sends: the amount to buy as a decimal number in the shop's unit; empty where an input is wrong. */
  get value(): string {
    const { buy } = this.result;
    // Never less than the amount: thirds of a yard have no end.
    return buy ? decimal(upTo(exact(buy.amount), exact(1, 10_000)), 4) : '';
  }

  /** Goes to the first cell that can be changed. */
  override focus(options?: FocusOptions): void {
    this.#cellOf()?.focus(options);
  }

  /** How lengths are shown here. */
  get lengthStyle(): Style {
    const given = this.flow?.values;
    const bare = unitsOr(this.units ?? given?.['units'], 'in');
    const units = unitsOr(this.shown ?? given?.['shown'], bare);
    return { units, comma: writesComma(this.#language), bare };
  }

  get #language(): string {
    return isAsServed(this) ? (this.getAttribute('lang') ?? 'en') : languageAt(this);
  }

  /** Whether the cell being typed in holds another text than when it was entered. */
  get #isTyped(): boolean {
    return this.#editing?.text !== this.#editing?.before;
  }

  get #own(): Record<string, unknown> {
    return this as unknown as Record<string, unknown>;
  }

  /** The inputs as the calculator takes them. */
  protected reckonInput(): Input {
    const given = ['units', 'shown', 'shared', ...Object.keys(this.calculator.fields)].map((key) => [
      key,
      this.#own[key] ?? this.flow?.values[key],
    ]);
    return { ...Object.fromEntries(given), lang: this.#language, measured: this.measured } as Input;
  }

  protected override createRenderRoot(): HTMLElement | DocumentFragment {
    const { shadowRoot } = this;
    if (shadowRoot && !isServer) {
      const typed = typedIn(shadowRoot);
      const active = shadowRoot.activeElement?.id;
      takeOver(this);
      void this.updateComplete.then(() => this.#goOn(typed, active));
    }
    if (isServer || this.ownerDocument === document) return super.createRenderRoot();
    // Lit's own way shares style sheets, which a document allows only those that were made in it.
    const root = shadowRoot ?? this.attachShadow({ mode: 'open' });
    dress(root, this);
    return root;
  }

  /** Goes on from what a server wrote with what the reader did there already. */
  #goOn(typed: [id: string, text: string][], active: string | undefined): void {
    isTakenOver(this);
    this.requestUpdate();
    const cellOf = (id: string | undefined): HTMLInputElement | null =>
      id ? (this.shadowRoot!.getElementById(id) as HTMLInputElement | null) : null;
    // Entered anew, so that what is typed there counts as typed; in a window that waits behind another no event says so.
    cellOf(active)?.focus();
    this.#focusIn({ target: cellOf(active) });
    for (const [id, text] of typed) {
      const cell = cellOf(id);
      if (cell) this.#replace(cell, text);
    }
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    // Not every browser says that the cell lost the focus.
    this.#editing = undefined;
    this.#marked = [];
    this.requestUpdate();
  }

  /** Moving to another document takes a shadow root's styles away. */
  adoptedCallback(): void {
    if (this.shadowRoot) dress(this.shadowRoot, this);
  }

  protected override written(property: string): unknown {
    const written = this.getAttribute(attributeOf(property));
    return written === null ? undefined : this.calculator.fields[property]?.kind === 'flag' || written;
  }

  protected override startAgain(): void {
    this.#editing = undefined;
    void this.updateComplete.then(() => this.#focusIn({ target: this.shadowRoot!.activeElement }));
  }

  /** The first thing wrong that a form minds; a blank input only where it is required. */
  get #wrong(): (Problem & { isMissing: boolean }) | undefined {
    return this.result.errors
      ?.map((error) => {
        const field = this.calculator.fields[error.input];
        return { ...error, isMissing: !!field && error.message === missing(field, this.lengthStyle) };
      })
      .find(({ isMissing }) => this.required || !isMissing);
  }

  protected override fault(): Fault | undefined {
    const wrong = this.#wrong;
    if (wrong) return { flag: wrong.isMissing ? 'valueMissing' : 'badInput', message: wrong.message };
    const over = this.#overStock;
    return over ? { flag: 'rangeOverflow', message: over } : undefined;
  }

  get #overStock(): string | undefined {
    const { calculator, lengthStyle, max, result } = this;
    return result.errors ? undefined : overStock(max, result, calculator, lengthStyle);
  }

  protected override faulty(): HTMLElement | undefined {
    return this.#cellOf(this.#wrong?.input);
  }

  protected override updated(): void {
    this.send();
    // For a worksheet around it, however its inputs came to change.
    this.dispatchEvent(new Event('reckoned', { bubbles: true }));
  }

  /** The cell of a row; the first that can be changed where no row is named, or it is not shown. */
  #cellOf(id = ''): HTMLElement | undefined {
    const root = this.shadowRoot;
    return (
      root?.querySelector<HTMLElement>(`[data-row='${id}']`) ??
      root?.querySelector<HTMLElement>('[part=cell]') ??
      undefined
    );
  }

  /** Whether the reader may switch units: not where an amount or a price goes by the unit it is sold in. */
  protected get switchable(): boolean {
    return !this.name && !this.flow && isBlank(this.price) && !this.#locks('units');
  }

  /** What is locked, by the attributes' names. */
  get #locked(): string[] {
    return (
      textOf(this.lock)
        .toLowerCase()
        .match(/[^\s,]+/g) ?? []
    );
  }

  #locks(attribute: string): boolean {
    return this.#locked.includes(attribute);
  }

  /** That a name in `lock` is none of an input: what was meant stays open. */
  #strayLock(): string[] {
    const names = ['units', ...Object.keys(this.calculator.fields).map(attributeOf)];
    return this.#locked
      .filter((name) => !names.includes(name))
      .map((name) => `${quoted(name)} in lock is no input here. Write it like ${names.slice(-2).join(' ')}.`);
  }

  // What is shown

  /** Inputs as they stand now, reckoned rows as they were last good. */
  #rows(): Row[] {
    const { errors, working } = this.result;
    return errors && this.#good
      ? this.#good.working.map((row) => working.find(({ id }) => id === row.id) ?? row)
      : working;
  }

  #labelOf(id: string): string {
    return this.calculator.fields[id]?.label ?? this.#rows().find((row) => row.id === id)?.label ?? id;
  }

  protected override render(): TemplateResult {
    if (isAsServed(this) && (isInWorksheet(this) || this.result.errors)) return html`<slot></slot>`;
    const { calculator } = this;
    const { title } = calculator;
    const { errors } = this.result;
    const rows = this.#rows();
    const good = this.#good;
    // In one order, whatever is written in them: a cell must not move while it is typed in.
    const refined = Object.keys(calculator.fields).flatMap((key) =>
      rows.filter(({ id, more }) => more && id === key),
    );
    const open = this.#open || refined.some(({ id }) => errors?.some(({ input }) => input === id));
    const style = this.lengthStyle;
    const off = !!errors;
    return html`<section
      part="sheet"
      class="sheet ${errors && good ? 'stale' : ''}"
      aria-label=${title}
      @keydown=${this.#keyDown}
      @input=${this.#typed}
      @change=${this.#changed}
      @focusin=${this.#focusIn}
      @focusout=${this.#focusOut}
      @pointerdown=${this.#pointed}
      @click=${this.#clicked}
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
          ${rows.filter((row) => !row.more).map(this.#row)}
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
        ${this.switchable ? action(`Show in ${style.units === 'in' ? 'centimetres' : 'inches'}`, this.#switch) : nothing}
        ${action('Copy table', this.#copy, { off })} ${action('Download CSV', this.#download, { off })} ${action('Print', this.#print, { off })}
        <span role="status">${this.#told}</span>
      </p>
    </section>`;
  }

  /** What an element shows besides, under its lists. */
  protected more(_good: R): unknown {
    return nothing;
  }

  #answer(rows: Row[]): TemplateResult {
    const { errors } = this.result;
    const good = this.#good;
    const [lead, large] = good
      ? (this.calculator.headline?.(good, this.lengthStyle) ?? [
          this.flow?.values['shared'] ? 'By itself' : 'Buy',
          good.buy.text,
        ])
      : [];
    const notes = errors
      ? [
          `Not reckoned${good ? ' again' : ''} yet: ${errors.map(({ input }) => this.#labelOf(input)).join(', ')}.`,
        ]
      : [this.#overStock ?? [], this.#strayLock(), good!.notes].flat();
    return html`<div part="answer" class="answer" role="status">
      ${good && html`<p class="buy">${lead} <strong part="amount">${unbroken(large!)}</strong> ${good.cost?.text}</p> <p>${unbroken(good.summary)}</p>`}
      ${notes.map((note) => html`<p class="note">${unbroken(note)}</p>`)}
      ${errors?.filter(({ input }) => !rows.some(({ id }) => id === input)).map(({ message }) => html`<p part="error" class="error">${message}</p>`)}
    </div>`;
  }

  #row = ({ id, label, value, role, how, reckoned }: Row): TemplateResult => {
    const field = this.calculator.fields[id];
    const message = this.result.errors?.find(({ input }) => input === id)?.message;
    const editing = this.#editing?.id === id;
    const text = editing ? this.#editing!.text : (message && this.measured?.[id]) || value;
    const locked = this.#locks(attributeOf(id));
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
    const got = html`${
      role === 'measured' || (flows && (this.#own[id] ?? undefined) !== undefined)
        ? html`${field ? 'your own' : 'measured'} ${action(unbroken(`put back ${reckoned ?? flows}`), () => this.#putBack(id), { off: this.off })}`
        : (flows && this.flow!.from[id]) || unbroken(how)
    } ${message && html`<span part="error" class="error">${unbroken(message)}</span>`}`;
    // Several lines need the width of both columns.
    const wide = field?.lines;
    return html`<tr class="${role} ${this.#marked.includes(id) ? 'marked' : ''}">
      <th scope="row" part="label">${open ? html`<label for=${id}>${label}</label>` : label}</th>
      <td class="amount" colspan=${wide ? 2 : nothing}>
        ${
          open
            ? cell({ id, field, text, wrong: !!message && !!text })
            : html`<output part="value" data-row=${id} tabindex="-1">${unbroken(chosen) || '–'}</output>`
        }
        ${editing && takesFractions ? fractionKeys(this.#typeIn) : nothing}
        ${wide && html`<p part="how" class="how" id="how-${id}">${got}</p>`}
      </td>
      ${wide ? nothing : html`<td part="how" class="how" id="how-${id}">${got}</td>`}
    </tr>`;
  };

  // What is typed

  /** Where what is typed in a row is kept. */
  #propertyOf = (id: string): string => (this.calculator.fields[id] ? id : 'measured');

  #take(id: string, text: string): void {
    const field = this.calculator.fields[id];
    const { units, bare } = this.lengthStyle;
    if (units !== bare) text = field ? (field.marked?.(text, units) ?? text) : inUnit(text, units);
    if (field) this.change(id, field.kind === 'flag' ? text === 'yes' : text);
    else this.change('measured', { ...this.measured, [id]: text });
    this.requestUpdate();
  }

  /** Back to what is reckoned there. */
  #forget(id: string): void {
    const { [id]: _gone, ...kept } = this.measured ?? {};
    this.change('measured', kept);
  }

  #typed = ({ target }: Event): void => {
    const id = rowOf(target);
    if (!id) return;
    const input = target as HTMLInputElement;
    const choices = [...this.renderRoot.querySelectorAll<HTMLSelectElement>(`select[data-row=${id}]`)];
    const text =
      input.type === 'checkbox'
        ? input.checked
          ? 'yes'
          : 'no'
        : choices.map(({ value }) => value).join(', ') || input.value;
    if (this.#editing?.id === id) this.#editing.text = text;
    this.#take(id, text);
  };

  /**
   * The browser's own `change` stops at the shadow root; the page hears this one. What is typed in changes when it is
   * left, since the browser does not count what a key of the sheet wrote there.
   */
  #changed = (event: Event): void => {
    event.stopPropagation();
    if (!isText(event.target)) this.tell('change');
  };

  protected tell(type: string): void {
    this.dispatchEvent(new Event(type, { bubbles: true, composed: true }));
  }

  #focusIn = ({ target }: { target: EventTarget | null }): void => {
    const id = rowOf(target);
    if (!id) return;
    this.#marked = this.#rows().find((row) => row.id === id)?.from ?? [];
    if (isText(target))
      this.#editing = {
        id,
        text: target.value,
        before: target.value,
        own: this.#own[this.#propertyOf(id)],
        good: this.#good,
      };
    this.requestUpdate();
  };

  #pointed = ({ target }: Event): void => {
    this.#pressed = target === this.shadowRoot!.activeElement ? null : target;
  };

  /** A first click into a cell of one line marks what stands there, as the Tab key does; typing then replaces it. */
  #clicked = ({ target }: Event): void => {
    if (target === this.#pressed && is(target, "[type='text']")) {
      const cell = target as HTMLInputElement;
      if (cell.selectionStart === cell.selectionEnd) cell.select();
    }
  };

  #focusOut = ({ target }: Event): void => {
    const id = rowOf(target);
    if (!id) return;
    // An emptied cell of a reckoned row means the reckoned value again.
    if (this.measured?.[id]?.trim() === '') this.#forget(id);
    const isTyped = this.#isTyped;
    this.#editing = undefined;
    this.#marked = [];
    this.requestUpdate();
    if (isTyped) this.tell('change');
  };

  #putBack(id: string): void {
    if (this.calculator.fields[id]) this.change(id, null);
    else this.#forget(id);
    this.#tellBoth();
  }

  #tellBoth(): void {
    this.tell('input');
    this.tell('change');
  }

  /** Puts a text in a cell as if the reader had typed it. */
  #replace(input: HTMLInputElement, text: string): void {
    input.value = text;
    input.dispatchEvent(new Event('input', { bubbles: true, composed: true }));
  }

  #typeIn = (sign: string): void => {
    const input = this.shadowRoot!.activeElement;
    if (!isText(input)) return;
    input.setRangeText(sign, input.selectionStart!, input.selectionEnd!, 'end');
    this.#replace(input, input.value);
  };

  #keyDown = (event: KeyboardEvent): void => {
    const { target, key, altKey } = event;
    const id = rowOf(target);
    if (!id || event.isComposing) return;
    const enter = key === 'Enter';
    // In a cell of several lines these keys move among its lines.
    const lines = is(target, 'textarea');
    const step = lines
      ? 0
      : key === 'ArrowDown' || (enter && !event.shiftKey)
        ? 1
        : enter || key === 'ArrowUp'
          ? -1
          : 0;
    if (step && altKey && isText(target)) this.#nudge(target, -step);
    else if (step && !altKey && (enter || !is(target, 'select'))) this.#walk(target as HTMLElement, step);
    // With nothing to put back the key is the page's: it may close a dialog.
    else if (key === 'Escape' && isText(target) && this.#isTyped) {
      const editing = this.#editing!;
      target.value = editing.text = editing.before;
      this.change(this.#propertyOf(id), editing.own);
      this.requestUpdate();
      this.tell('input');
    } else return;
    event.preventDefault();
  };

  #walk(from: HTMLElement, step: number): void {
    const cells = [...this.renderRoot.querySelectorAll<HTMLElement>('[data-row]')];
    const next = cells[cells.indexOf(from) + step];
    next?.focus();
    if (isText(next)) next.select();
  }

  #nudge(input: HTMLInputElement, by: number): void {
    const { kind } = this.calculator.fields[rowOf(input)!] ?? { kind: 'length' };
    const { inches } = this.#good?.working.find(({ id }) => id === 'mark') ?? {};
    const text = nudged(input.value, by, kind, this.lengthStyle, inches);
    if (text) this.#replace(input, text);
  }

  #switch = (): void => {
    this.change('shown', this.lengthStyle.units === 'in' ? 'cm' : 'in');
    this.#tellBoth();
  };

  #fold(open: boolean): void {
    this.#open = open;
    this.requestUpdate();
  }

  // Taking it away

  /** What is copied and downloaded. */
  protected cells(good: R): Cells {
    return cellsOf(good);
  }

  #copy = async (): Promise<void> => {
    try {
      // Absent on a page without https.
      await navigator.clipboard.writeText(tabbedOf(this.cells(this.#good!)));
      this.#told = 'Copied.';
    } catch {
      this.#told = 'This browser does not allow copying here; the CSV holds the same.';
    }
    this.requestUpdate();
  };

  #download = (): void =>
    download(`${this.calculator.title.toLowerCase()}.csv`, csvOf(this.cells(this.#good!)));

  /** What is printed in place of the sheet. */
  protected paper?(good: R): TemplateResult;

  #print = (): void => printAlone(this.shadowRoot!, this.calculator.title, this.paper?.(this.#good!));
}

const rowOf = (target: EventTarget | null | undefined): string | undefined =>
  (target as HTMLElement | null)?.dataset?.['row'];

/** What a reader typed into a server's cells before the script came: the row of each, and its text. */
const typedIn = (served: ShadowRoot): [id: string, text: string][] =>
  [...served.querySelectorAll<HTMLInputElement>("[type='text']")]
    .filter(({ value, defaultValue }) => value !== defaultValue)
    .map(({ id, value }) => [id, value]);

/** Not by `instanceof`: in a frame's document an element is of another window's class. */
const is = (target: unknown, selector: string): boolean => !!(target as Element | null)?.matches?.(selector);

const isText = (target: unknown): target is HTMLInputElement => is(target, "[type='text'], textarea");

const sameInput = (a: Input, b: Input | undefined): boolean =>
  !!b && Object.keys(a).every((key) => a[key] === b[key]);
