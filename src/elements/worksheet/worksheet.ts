import { html, isServer, nothing, type PropertyDeclarations, type TemplateResult } from 'lit';
import type { Calculator } from '../../calculators/calculator.js';
import { drawPlans } from '../../calculators/cutting/draw.js';
import type { Input } from '../../ledger/ledger.js';
import type { Listing } from '../../ledger/listing.js';
import type { Picture } from '../../ledger/picture.js';
import { isPlanning } from '../../ledger/planning.js';
import type { Size } from '../../ledger/quilt.js';
import { stripList } from '../../ledger/strip-list.js';
import { isBlank, textOf } from '../../ledger/field.js';
import { isExact } from '../../measure/exact.js';
import type { Message } from '../../measure/message.js';
import { propertiesOf } from '../../face/calculator.js';
import { action } from '../../face/cell.js';
import { download, spreadsheetCell, type Cells } from '../../face/export.js';
import type { Face } from '../../face/face.js';
import type { Fault } from '../../face/form-field.js';
import { figures, listing } from '../../face/lists.js';
import type { Good } from '../../face/outcome.js';
import { loadPicture } from '../../face/picture.js';
import { ReadingFace } from '../../face/planning-face.js';
import { drawInTime, isFlowAlone, isPatient } from '../../face/out-of-sight.js';
import { answerOnServer, insideOnServer } from '../../face/server.js';
import { isColour, type Swatches } from '../../face/swatch.js';
import { isCrowd } from '../../face/turns.js';
import { worksheetCells } from '../../workbook/cells.js';
import { Fabrics } from '../../workbook/fabrics.js';
import { asCut, leftoverList, mayLeave } from '../../workbook/leftover-list.js';
import { flow, isSame, type FlowSource } from '../../workbook/flow.js';
import type { FlowSayings } from '../../workbook/flow-sayings.js';
import { gather, type PieceOfPart } from '../../workbook/gather.js';
import { NOTHING } from '../../workbook/input.js';
import { letterOf } from '../../workbook/parts.js';
import { reckon } from '../../workbook/reckon.js';
import { say } from '../../workbook/sayings.js';
import { worksheetFields, type PlannedTogether, type WorksheetAnswer } from '../../workbook/shape.js';
import { headline, makesList, shopping } from '../../workbook/shopping.js';
import type { QuiltParts } from '../../workbook/whole-quilt.js';
import { weekByWeek } from '../../workbook/weeks.js';
import { inEnglish } from '../../words/en/english.js';
import { worksheet as words } from '../../words/en/worksheet.js';
import { Teller } from '../../words/teller.js';
import type { WorkingRow } from '../../words/told.js';
import type { QuiltBlock } from '../block/block.js';
import type { QuiltFabric } from '../fabric/fabric.js';
import { contentOf, passedOn } from './content.js';
import { flowingPart, giveTo, isBlock, isCutList, partOnPage } from './parts.js';
import { keyOf, requirementSheet } from './paper.js';
import { worksheetStyles } from './styles.js';
import { quiltOf, type CountedBlock } from './whole.js';

/** A part or a fabric whose element is defined. Others are left out until they are. */
const isPart = (element: Element): element is Face => 'outcome' in element;
const isFabric = (element: Element): element is QuiltFabric => 'swatch' in element;

/** That there are fewer or more blocks than places. */
const UNEVEN: keyof FlowSayings = 'blocksForOtherPlaces';

type Pictures = Awaited<ReturnType<typeof loadPicture>>;

/** The name of its picture of the whole quilt, where that is opened. */
const QUILT = 'wholeQuilt';

/** What it gives to all of its parts, if it is written. */
const FOR_PARTS = ['width', 'length', 'fabricWidth', 'seam'];

/** The worksheet that gave a part its sizes last. */
const givenBy = new WeakMap<Face, QuiltWorksheet>();

/**
 * One quilt: the size of the top flows to the borders, and the size with borders to backing, binding and batting. The cloth of all
 * parts comes together in one shopping list, with prices, kits and a fabric key. An attribute on a part counts before what flows.
 *
 * @tagname quilt-worksheet
 * @slot - The quilt's parts and fabrics, in any order and any markup.
 */
export class QuiltWorksheet extends ReadingFace<WorksheetAnswer> {
  static override styles = [...ReadingFace.styles, worksheetStyles];
  static override properties: PropertyDeclarations = {
    ...propertiesOf(worksheetFields),
    atHand: { attribute: 'at-hand', type: Boolean },
  };

  /** How many kits to cut, for a shop. Default none. */
  declare kits: string | number | undefined;
  /** How much cloth a bolt holds. A length. Default `15 yd`, or `13.5 m` in metric. */
  declare bolt: string | number | undefined;

  /** The shopping list has a cell for every fabric, where the reader writes what she has of it. Default false. */
  declare atHand: boolean;

  /** What the parts and the fabrics say. */
  #gathered = NOTHING;
  /** Parts that sizes were given to. */
  #given: Face[] = [];
  #pieces: PieceOfPart[] = [];
  #swatches: Swatches = {};
  #size: Size | undefined;
  /** What the reader has to write: there are other blocks than places, or she changed the blocks but not their cut list. */
  #outgrown: Message | undefined;
  /** The blocks that lie in the places of the top. */
  #blocks: CountedBlock[] = [];
  /** Whether a part is still being planned. What it takes is not in the list yet. */
  #isEarly = false;
  /** Whether a part has drawn itself since this was last read. */
  #isUnread = false;

  override readonly calculator: Calculator<WorksheetAnswer> = {
    name: 'worksheet',
    fields: worksheetFields,
    reckon: (input) =>
      isServer
        ? reckon(input, this.#gathered)
        : this.plans.reckon((plan) => reckon(input, this.#gathered, plan), this.#isEarly),
    headline,
    draw: (answer) => plansOf(answer).flatMap(drawTogether),
    lists: (answer) => [shopping(answer), ...makesList(answer), ...joint(answer)],
  };
  protected override readonly english = inEnglish(words);
  // Its list is what it is for.
  protected override readonly foldsLists = false;

  constructor() {
    super();
    this.atHand = false;
    answerOnServer(this, (first: QuiltWorksheet) => {
      first.readInside();
      // The worksheet needs their words.
      this.#given = first.#given;
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
   * What somebody types settles at once, so that listeners of the event see it. If parts have drawn themselves, it waits until the
   * others of the same turn are drawn too.
   */
  #heard = ({ target, type }: Event): void => {
    if (target === this) return;
    if (type !== 'reckoned') this.readInside();
    else if (!this.#isUnread && !isFlowAlone(target)) {
      this.#isUnread = true;
      queueMicrotask(() => this.settle());
    }
  };

  protected override get switchable(): boolean {
    const content = this.#content;
    const priced = [...content.filter(isPart), ...content.filter(isFabric)];
    return super.switchable && priced.every(({ price }) => isBlank(price));
  }

  protected override willUpdate(): void {
    if (!isServer && !isPatient(this)) this.readInside();
  }

  /** An unfinished worksheet is valid if the author left something out, but not if the reader has to write something. */
  protected override fault(): Fault | undefined {
    const outgrown = this.#outgrown;
    return super.fault() ?? (outgrown && { flag: 'badInput', message: this.teller.say(outgrown) });
  }

  // This many parts are reckoned only after the page had its turn.
  protected override putsOff(): boolean {
    return (this.#isUnread = !this.hasUpdated && !this.form && isCrowd());
  }

  /** Gives the parts their sizes, if something has changed. */
  settle(): void {
    if (this.#isUnread) this.readInside();
  }

  override reckonInput(): Input {
    this.settle();
    return { ...super.reckonInput(), gathered: this.#gathered };
  }

  /** Those in this worksheet, without those of a worksheet inside it. */
  get #content(): Element[] {
    return isServer ? insideOnServer(this) : contentOf(this);
  }

  get #fabrics(): QuiltFabric[] {
    return this.#content.filter(isFabric);
  }

  /** Lets the sizes flow through the parts, and gathers what they take. */
  protected override readInside(): void {
    this.#isUnread = false;
    const { lengthStyle } = this;
    const content = this.#content;
    if (!isServer) passedOn(content).forEach((passed) => this.watch(passed));
    const parts = content.filter(isPart);
    const fabrics = new Fabrics(content.filter(isFabric), this.fabricWidth, lengthStyle);
    const flowingParts = parts.map((part) => flowingPart(part, lengthStyle));
    const { size, caution, uneven, outgrown, counted } = flow(this.#source, flowingParts, fabrics, giveTo);
    this.#takeOn(parts);
    const { width, length } = size;
    this.#size = isExact(width) && isExact(length) ? { width, length } : undefined;

    this.#isEarly = parts.some(({ outcome }) => outcome.reckoning.issues.some(isPlanning));
    const { gathered, pieces } = gather(parts.map(partOnPage), fabrics, isColour);
    if (this.atHand) for (const fabric of gathered.fabrics) fabric.atHand ??= '';
    this.#pieces = pieces;
    this.#blocks = counted.flatMap(({ part: { part }, count }) => (isBlock(part) ? { part, count } : []));
    const isWritten = outgrown.some(({ part }) => isCutList(part) && part.isAsWritten);
    this.#outgrown = uneven ?? (isWritten ? caution : undefined);
    if (uneven) gathered.unfinished.push(uneven);
    if (caution && (isWritten || !outgrown[0])) gathered.unfinished.push(caution);
    const { swatches } = fabrics;
    // A chart may change and take the same cloth.
    if (this.isOpen(QUILT)) this.requestUpdate();
    if (isSame([gathered, swatches], [this.#gathered, this.#swatches])) return;
    this.#swatches = swatches;
    this.#gathered = gathered;
    drawInTime(this);
    // A listener may ask the form for its value at once.
    if (this.form) this.send();
  }

  /** Its own inputs, for its parts. */
  get #source(): FlowSource {
    const { width, length, seam, units, shown, shrinkage, increment, currency } = this;
    return { width, length, seam, units, shown, shrinkage, increment, currency };
  }

  /** Takes these as its parts. A part that has left, and is in no other worksheet, loses its sizes. */
  #takeOn(parts: Face[]): void {
    parts.forEach((part) => givenBy.set(part, this));
    for (const part of this.#given)
      if (!parts.includes(part) && givenBy.get(part) === this) part.flow = undefined;
    this.#given = parts;
  }

  /** The teller, with the words of its parts, because it says what they say. */
  override get teller(): Teller {
    const own = super.teller;
    const others = Object.fromEntries(
      this.#given.map(({ calculator, teller }) => [calculator.name, teller.words]),
    );
    const isKnown = this.#spoken?.style === own.style && this.#spoken.lang === own.lang;
    if (this.#spoken && isKnown && isSame(this.#spoken.words.others, others)) return this.#spoken;
    return (this.#spoken = new Teller({ ...own.words, others }, own.style, own.lang));
  }
  #spoken: Teller | undefined;

  readonly #typed = this.typed;
  protected override typed = (event: Event): void => {
    if (!this.#isWritten(event)) this.#typed(event);
  };

  readonly #changed = this.changed;
  protected override changed = (event: Event): void => {
    if (!this.#isWritten(event)) this.#changed(event);
  };

  /** Gives a fabric what the reader wrote about it, and says so from there. False if she wrote something else. */
  #isWritten(event: Event): boolean {
    const { target, type } = event;
    if (!(target instanceof HTMLInputElement)) return false;
    const { entry: letter } = target.dataset;
    if (letter === undefined) return false;
    const fabric = this.#fabrics.find((one) => letterOf(one.letter) === letter);
    event.stopPropagation();
    if (!fabric) return true;
    fabric.atHand = target.value;
    fabric.dispatchEvent(new Event(type, { bubbles: true, composed: true }));
    return true;
  }

  /** A shop that writes prices may cut kits. It should not have to look for that. */
  protected override isSetting(row: WorkingRow): boolean {
    return super.isSetting(row) && (row.id !== 'kits' || !this.answer?.total);
  }

  /** Parts have their own sizes and cloth where nothing is written here for all of them, so none is missing. */
  protected override standing(rows: WorkingRow[]): ReturnType<ReadingFace['standing']> {
    return super.standing(rows.filter(({ id, value }) => value || !FOR_PARTS.includes(id)));
  }

  protected override render(): TemplateResult {
    return html`<slot></slot>${super.render()}`;
  }

  /** Under the question which block to make more or fewer of: a button for each block that can be. */
  protected override under(note: Message): unknown {
    const { difference: by }: { difference?: unknown } = note.values;
    if (note.code !== UNEVEN || typeof by !== 'number') return super.under(note);
    const buttons = this.#blocks.flatMap(({ part, count: now = 0 }, at) => {
      if (!part.isCounted || now + by < 0) return [];
      const words = say('moreOfBlock', { by, name: textOf(part.name), number: at + 1 });
      return action(this.teller.say(words), () => this.#make(part, now + by));
    });
    return buttons[0] && html`<span class="actions">${buttons}</span>`;
  }

  /** Makes so many of a block. If the question goes away, the answer has the focus in place of its button. */
  #make(block: QuiltBlock, many: number): void {
    block.countAs(many);
    void this.updateComplete.then(() => {
      if (this.shadowRoot!.activeElement) return;
      const answer = this.shadowRoot!.querySelector<HTMLElement>('[part=answer]');
      if (answer) answer.tabIndex = -1;
      answer?.focus();
    });
  }

  /** What there is of the quilt, for a picture of it. */
  get quilt(): QuiltParts {
    return quiltOf(this.#given, this.#blocks);
  }

  override get swatches(): Swatches {
    return this.#swatches;
  }

  /** The whole quilt as one picture. It is made only while somebody looks at it. */
  protected override above(good: Good<WorksheetAnswer>): unknown {
    const { quilt } = this;
    if (!quilt.top && !quilt.borders) return nothing;
    const { t } = good;
    const open = this.isOpen(QUILT);
    const fold = action(t.say(say(open ? 'hideQuilt' : 'showQuilt')), () => this.#show(!open), { open });
    if (!open) return html`<p class="actions">${fold}</p>`;
    const svg = action(t.say(say('saveSvg')), () => this.#save('svg'));
    const png = action(t.say(say('savePng')), () => this.#save('png'));
    return html`<div class="whole">${this.#drawn(quilt, t)}</div>
      <p class="actions">${fold} ${svg} ${png}</p>`;
  }

  /** What draws the whole quilt, once it is loaded. */
  #draw: Pictures['wholeQuilt'] | undefined;

  /** Loads it. Without it, for want of a network, the rest of the worksheet still works. */
  async #loaded(): Promise<Pictures | undefined> {
    try {
      const pictures = await loadPicture();
      this.#draw = pictures.wholeQuilt;
      return pictures;
    } catch {
      this.report(say('cannotDraw'));
      return undefined;
    }
  }

  protected override readyForPaper = (): Promise<unknown> => this.#loaded();

  #show(open: boolean): void {
    this.setOpen(QUILT, open);
    if (open) void this.#loaded().then(() => this.requestUpdate());
  }

  #drawn(quilt: QuiltParts, t: Teller): TemplateResult[] {
    const picture = this.#draw?.(quilt);
    return picture ? figures([picture], t, this.swatches) : [];
  }

  /** Saves the picture of the whole quilt as a file. */
  async #save(kind: 'svg' | 'png'): Promise<void> {
    const drawing = this.shadowRoot?.querySelector('.whole')?.querySelector('svg');
    if (!drawing) return;
    const name = `${this.teller.say(say('wholeQuilt')).toLowerCase()}.${kind}`;
    const pictures = await this.#loaded();
    if (!pictures) return;
    try {
      const file = await (kind === 'svg' ? pictures.svgFile : pictures.pngFile)(drawing);
      download(name, file, { type: file.type });
    } catch {
      this.report(say('cannotSave'));
    }
  }

  protected override more(good: Good<WorksheetAnswer>): unknown {
    return [this.#weekly(good), this.#leftovers(good), keyOf(good, this.#swatches)];
  }

  /** What each part cuts from which sheets, folded away. */
  #weekly({ answer, t }: Good<WorksheetAnswer>): unknown {
    const list = weekByWeek(answer);
    if (!list) return nothing;
    const shut = !this.isOpen(list.caption.code);
    return html`${this.#opener(list.caption, t)}
      <div class=${shut ? 'folded' : nothing}>${listing(list, t)}</div>`;
  }

  /** What is left over, folded away. It is reckoned when somebody opens it. */
  #leftovers({ answer, t }: Good<WorksheetAnswer>): unknown {
    if (!mayLeave(answer)) return nothing;
    const caption = say('leftoversList');
    const shown = this.isOpen(caption.code) && listing(leftoverList(answer, t.style), t);
    return html`${this.#opener(caption, t)} ${shown || nothing}`;
  }

  /** Opens and closes a list. */
  #opener(caption: Message, t: Teller): unknown {
    const open = this.isOpen(caption.code);
    const toggle = (): void => this.setOpen(caption.code, !open);
    return html`<p class="actions toggles">${action(t.say(caption), toggle, { open })}</p>`;
  }

  protected override cells(good: Good<WorksheetAnswer>): Cells {
    const cells = [...this.sheetLists(good), ...super.cells(good)];
    const widest = Math.max(...cells.map((row) => row.length));
    return cells.map((row) => [...row, ...Array<string>(widest - row.length).fill('')]);
  }

  /** The shopping list, the cut list and what is left over. */
  protected override sheetLists({ answer, reckoning, t }: Good<WorksheetAnswer>): Cells {
    const list = worksheetCells(answer, reckoning.notes, this.#pieces, t.style);
    return list.map((row) => row.map((cell) => spreadsheetCell(cell, t)));
  }

  protected override paper = (good: Good<WorksheetAnswer>): TemplateResult => {
    const { answer, t } = good;
    const pictures = figures(this.pictures(answer), t, this.swatches);
    return requirementSheet(good, {
      parts: this.#given,
      pieces: asCut(this.#pieces, answer),
      key: keyOf(good, this.#swatches),
      quilt: this.#drawn(this.quilt, t),
      joint: pictures,
      // Their words need the width of the paper.
      lists: [...joint(answer), weekByWeek(answer) ?? []].flat(),
      size: this.#size ? `${t.size(this.#size)}.` : '',
    });
  };
}

/** The plans of parts that are laid out together. */
const plansOf = ({ fabrics, items }: WorksheetAnswer): PlannedTogether[] =>
  [...fabrics, ...items].flatMap(({ own, together }) => [
    ...(own?.plans ?? []),
    ...(together ? [together] : []),
  ]);

/** A plan that is cut as drawn shows the size of each piece. */
const drawTogether = (plan: PlannedTogether): Picture[] => {
  const pictures = drawPlans([plan]);
  if (!plan.strips.some(({ asDrawn }) => asDrawn)) return pictures;
  return pictures.map((picture) => ({ ...picture, largeFor: 'sizes' }));
};

/** The strips of parts that are laid out together. */
const joint = (answer: WorksheetAnswer): Listing[] => {
  const plans = plansOf(answer);
  const strips = plans.map(({ fabric, strips }) => ({ of: fabric, strips }));
  return plans.length ? [stripList(strips, say('fabricHead'), say('stripsTogether'), 'givesSizes')] : [];
};

declare global {
  interface HTMLElementTagNameMap {
    'quilt-worksheet': QuiltWorksheet;
  }
}
