import { html, isServer, type TemplateResult } from 'lit';
import { drawCutting } from '../../drawing/cutting.js';
import { length, type Style } from '../../measure/format.js';
import type { Input } from '../../reckon/answer.js';
import { isBlank } from '../../reckon/fields.js';
import { plural } from '../../reckon/shared.js';
import { reckonWorksheet, worksheetFields, type WorksheetResult } from '../../reckon/worksheet.js';
import { BackgroundSheet } from '../../face/background-sheet.js';
import { propertiesOf, type Calculator, type Listing } from '../../face/calculator.js';
import { cellsOf, type Cells } from '../../face/export.js';
import type { Fault } from '../../face/form-field.js';
import { figures, listing } from '../../face/lists.js';
import { answerOnServer, insideOnServer } from '../../face/server.js';
import type { QuiltSheet } from '../../face/sheet.js';
import { isCrowd } from '../../face/turns.js';
import { stripList } from '../cutting/strips.js';
import type { QuiltFabric } from '../fabric/fabric.js';
import { Fabrics, flowing } from './fabrics.js';
import { flow } from './flow.js';
import { gather, type Gathered } from './gather.js';
import { inside, passedOn } from './inside.js';
import { fabricKey, requirementSheet } from './paper.js';
import { shopping, worksheetCells, type Piece } from './shopping.js';
import { worksheetStyles } from './styles.js';

/** A part or a fabric that has been defined; one that has not yet is left out until it is. */
const isPart = (element: Element): element is QuiltSheet => 'calculator' in element;
const isFabric = (element: Element): element is QuiltFabric => 'swatch' in element;

/** The worksheet that gave a part its sizes last; one that has moved to another keeps those. */
const givenBy = new WeakMap<QuiltSheet, QuiltWorksheet>();

/**
 * One quilt: the top's size flows to its borders, the bordered size to backing, binding and batting, and all that the parts
 * take comes together in one shopping list, with prices, kits and a fabric key. An attribute on a part wins over what flows.
 *
 * @tagname quilt-worksheet
 * @slot - The quilt's parts and fabrics, in any order and any markup.
 */
export class QuiltWorksheet extends BackgroundSheet<WorksheetResult> {
  static override styles = [...BackgroundSheet.styles, worksheetStyles];
  static override properties = propertiesOf(worksheetFields);

  /** How many kits to cut, for a shop. Default none. */
  declare kits: string | number | undefined;
  /** How much cloth a bolt holds. A length. Default `15 yd`. */
  declare bolt: string | number | undefined;

  /** What the parts and the fabrics say, and the same as text, to tell when it changes. */
  #gathered: Gathered = {};
  #told = '';
  /** Parts that sizes were given to. */
  #given: QuiltSheet[] = [];
  #pieces: Piece[] = [];
  #swatches = new Map<string, string>();
  #size = '';
  /** That the reader has changed the blocks, and not the cut list that was written for them. */
  #outgrown = '';
  /** Whether a part has drawn itself since that was read. */
  #isUnread = false;

  override readonly calculator: Calculator<WorksheetResult> = {
    title: 'Shopping list',
    fields: worksheetFields,
    reckon: (input) =>
      isServer ? reckonWorksheet(input) : this.plans.reckon((plan) => reckonWorksheet(input, plan)),
    headline: ({ total, soFar, fabrics, items, kits }) =>
      kits?.cost
        ? [`For ${plural(kits.count, 'kit')}${soFar ? ', so far' : ''}`, kits.cost.text]
        : total
          ? [soFar ? 'So far' : kits ? 'One kit' : 'In all', total.text]
          : [soFar ? 'Buy, so far' : 'Buy', plural(fabrics.length + items.length, 'thing')],
    draw: (result) =>
      drawCutting({ fabrics: result.fabrics.flatMap(({ together }) => together ?? []) }, this.lengthStyle),
    listings: (result, style) => [shopping(result, style), ...joint(result, style)],
  };

  constructor() {
    super();
    answerOnServer(this, (first: QuiltWorksheet) => {
      first.readInside();
      this.#gathered = first.#gathered;
      this.#swatches = first.#swatches;
    });
  }

  override connectedCallback(): void {
    super.connectedCallback();
    if (isServer) return;
    for (const type of ['input', 'change', 'reckoned', 'slotchange'])
      this.addEventListener(type, this.#heard);
  }

  /**
   * What is typed settles at once, for whoever hears of it next; parts that have drawn themselves, once all that are to be
   * drawn with them are done.
   */
  #heard = ({ target, type }: Event): void => {
    if (target === this) return;
    if (type !== 'reckoned') this.readInside();
    else if (!this.#isUnread) {
      this.#isUnread = true;
      queueMicrotask(() => this.settle());
    }
  };

  protected override get switchable(): boolean {
    return super.switchable && [...this.#parts, ...this.#fabrics].every(({ price }) => isBlank(price));
  }

  protected override willUpdate(): void {
    if (!isServer) this.readInside();
  }

  /** What it lacks may be what the author left out; but not what the reader has to write. */
  protected override fault(): Fault | undefined {
    const message = this.#outgrown;
    return super.fault() ?? (message ? { flag: 'badInput', message } : undefined);
  }

  // So many parts are not reckoned before the page has had its turn.
  protected override putsOff(): boolean {
    return (this.#isUnread = !this.hasUpdated && !this.form && isCrowd());
  }

  /** Gives its parts their sizes, if something is still to be read. */
  settle(): void {
    if (this.#isUnread) this.readInside();
  }

  protected override reckonInput(): Input {
    this.settle();
    return { ...super.reckonInput(), ...this.#gathered };
  }

  /** Those inside this worksheet, and not in one inside it. */
  get #inside(): Element[] {
    return isServer ? insideOnServer(this) : inside(this);
  }

  get #parts(): QuiltSheet[] {
    return this.#inside.filter(isPart);
  }

  get #fabrics(): QuiltFabric[] {
    return this.#inside.filter(isFabric);
  }

  /** Lets the sizes flow through the parts, and gathers what all take. */
  protected override readInside(): void {
    this.#isUnread = false;
    if (!isServer) passedOn(this).forEach((passed) => this.watch(passed));
    const { lengthStyle } = this;
    const parts = this.#parts;
    const fabrics = new Fabrics(this.#fabrics, this.fabricWidth, lengthStyle);
    const { size, caution, lists } = flow(this, parts, fabrics);
    parts.forEach((part) => givenBy.set(part, this));
    for (const part of this.#given)
      if (!parts.includes(part) && givenBy.get(part) === this) part.flow = undefined;
    this.#given = parts;
    const [wide, long] = [size.width, size.length].map((side) => flowing(side, lengthStyle).inches);
    this.#size = wide && long ? `${length(wide, lengthStyle)} × ${length(long, lengthStyle)}.` : '';

    const { gathered, pieces } = gather(parts, fabrics);
    this.#pieces = pieces;
    this.#swatches = fabrics.swatches;
    this.#outgrown = lists.some(({ isAsWritten }) => isAsWritten) ? caution : '';
    if (caution && (this.#outgrown || !lists[0])) gathered.unfinished!.push(caution);
    const told = JSON.stringify([gathered, ...this.#swatches.values()]);
    if (told === this.#told) return;
    this.#told = told;
    this.#gathered = gathered;
    this.requestUpdate();
    // Whoever hears of what was typed may ask its form at once.
    if (this.form) this.send();
  }

  protected override render(): TemplateResult {
    return html`<slot></slot>${super.render()}`;
  }

  protected override more(result: WorksheetResult): unknown {
    return fabricKey(result, this.#swatches);
  }

  protected override cells(result: WorksheetResult): Cells {
    const cells = [...worksheetCells(result, this.#pieces, this.lengthStyle), ...cellsOf(result)];
    const widest = Math.max(...cells.map((row) => row.length));
    return cells.map((row) => [...row, ...Array<string>(widest - row.length).fill('')]);
  }

  protected override paper = (result: WorksheetResult): TemplateResult => {
    const { lengthStyle: style } = this;
    return requirementSheet(result, {
      parts: this.#given,
      pieces: this.#pieces,
      key: this.more(result),
      joint: [...figures(this.calculator.draw(result, style)), ...joint(result, style).map(listing)],
      size: this.#size,
      style,
    });
  };
}

/** The strips of parts that are laid out together. */
const joint = ({ fabrics }: WorksheetResult, style: Style): Listing[] => {
  const plans = fabrics.flatMap(({ together }) => together ?? []);
  return plans.length
    ? [{ ...stripList(plans, style), caption: 'Parts cut together: strips, from the top of the cloth' }]
    : [];
};

declare global {
  interface HTMLElementTagNameMap {
    'quilt-worksheet': QuiltWorksheet;
  }
}
