import { html, isServer, type TemplateResult } from 'lit';
import { drawCutting } from '../../drawing/cutting.js';
import { ZERO, type Exact } from '../../measure/exact.js';
import { asTyped, length, mixed, type Style } from '../../measure/format.js';
import type { Input } from '../../reckon/answer.js';
import { PLANNING } from '../../reckon/cutting.js';
import { isBlank, lengthOf, Refusal, textOf } from '../../reckon/fields.js';
import { plural } from '../../reckon/shared.js';
import {
  reckonWorksheet,
  worksheetFields,
  type WorksheetInput,
  type WorksheetResult,
} from '../../reckon/worksheet.js';
import { BackgroundPlans } from '../../sheet/background-plans.js';
import { propertiesOf, type Calculator, type Flow, type Listing } from '../../sheet/calculator.js';
import { cellsOf, type Cells } from '../../sheet/export.js';
import { figures, listing } from '../../sheet/lists.js';
import { answerOnServer, isAsServed } from '../../sheet/server.js';
import { QuiltSheet } from '../../sheet/sheet.js';
import { COTTON_WIDTH } from '../../trade/conventions.js';
import { stripList } from '../cutting/strips.js';
import type { QuiltCutting } from '../cutting/cutting.js';
import type { QuiltFabric } from '../fabric/fabric.js';
import type { QuiltTop } from '../top/top.js';
import { fabricKey, requirementSheet } from './paper.js';
import { lettersOf, takesOf } from './part.js';
import { shopping, worksheetCells, type Piece } from './shopping.js';
import { worksheetStyles } from './styles.js';

/** The calculators a worksheet holds, in the order the quilt's size flows through them. */
const FLOWING = ['quilt-top', 'quilt-borders'];
const PARTS = [...FLOWING, 'quilt-backing', 'quilt-binding', 'quilt-batting', 'quilt-cutting'];

/** A part that has been defined; one that has not yet is left out until it is. */
const isPart = (element: Element): element is QuiltSheet => 'calculator' in element;

/** That the list lacks cloth for the blocks: there is none, or it was written for other blocks. */
const cautionOf = ({ blocks: { written, now } }: QuiltTop, lists: QuiltCutting[]): string =>
  !lists[0]
    ? now &&
      'Cloth for the blocks is not in this list. Add a <quilt-cutting> with what to cut for them, like A | square | 3 1/2 | 12.'
    : written && now && written !== now
      ? `The cut list was written for ${written}; the top now has ${now}. Write how many pieces those take, and of what size.`
      : '';

/**
 * One quilt: the top's size flows to its borders, the bordered size to backing, binding and batting, and all that the parts
 * take comes together in one shopping list, with prices, kits and a fabric key. An attribute on a part wins over what flows.
 *
 * @tagname quilt-worksheet
 * @slot - The quilt's parts and fabrics, in any order and any markup.
 */
export class QuiltWorksheet extends QuiltSheet<WorksheetResult> {
  static override styles = [...QuiltSheet.styles, worksheetStyles];
  static override properties = propertiesOf(worksheetFields);

  /** How many kits to cut, for a shop. Default none. */
  declare kits: string | number | undefined;
  /** How much cloth a bolt holds. A length. Default `15 yd`. */
  declare bolt: string | number | undefined;

  /** What the parts and the fabrics say, and the same as text, to tell when it changes. */
  #gathered: Pick<WorksheetInput, 'fabrics' | 'parts' | 'items' | 'troubles' | 'unfinished' | 'named'> = {};
  #told = '';
  /** Parts that sizes were given to. */
  #given: QuiltSheet[] = [];
  #pieces: Piece[] = [];
  #swatches = new Map<string, string>();
  #size = '';
  readonly #plans = new BackgroundPlans((ready) => {
    this.reckonAgain();
    if (ready) this.tell('change');
  });
  #watch: MutationObserver | undefined;

  override readonly calculator: Calculator<WorksheetResult> = {
    title: 'Shopping list',
    fields: worksheetFields,
    reckon: (input) => this.#plans.reckon((plan) => reckonWorksheet(input, plan)),
    headline: ({ total, soFar, fabrics, items, kits }) =>
      kits?.cost
        ? [`For ${plural(kits.count, 'kit')}${soFar ? ', so far' : ''}`, kits.cost.text]
        : total
          ? [soFar ? 'So far' : kits ? 'One kit' : 'In all', total.text]
          : ['Buy', plural(fabrics.length + items.length, 'thing')],
    draw: (result) =>
      drawCutting({ fabrics: result.fabrics.flatMap(({ together }) => together ?? []) }, this.lengthStyle),
    listings: (result, style) => [shopping(result, style), ...joint(result, style)],
  };

  constructor() {
    super();
    answerOnServer(this);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    if (isServer) return;
    this.#watch = new MutationObserver(() => this.#settle());
    this.#watch.observe(this, { childList: true, subtree: true });
    for (const type of ['input', 'change', 'reckoned']) this.addEventListener(type, this.#heard);
    for (const name of PARTS) void customElements.whenDefined(name).then(() => this.#settle());
    this.#settle();
    // A plan that was under way when it was moved here has stopped.
    this.reckonAgain();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#watch?.disconnect();
    this.#plans.stop();
  }

  /** What is typed settles at once, for whoever hears of it next; a part that has drawn itself, when it is done. */
  #heard = ({ target, type }: Event): void => {
    if (target === this) return;
    if (type === 'reckoned') queueMicrotask(() => this.#settle());
    else this.#settle();
  };

  protected override get switchable(): boolean {
    const priced = this.#held<QuiltSheet | QuiltFabric>('quilt-fabric', ...PARTS);
    return super.switchable && priced.every(({ price }) => isBlank(price));
  }

  protected override willUpdate(): void {
    this.#settle();
  }

  protected override reckonInput(): Input {
    return { ...super.reckonInput(), ...this.#gathered };
  }

  /** Those of these names that are inside this worksheet, and not in one inside it. */
  #held<E extends Element>(...names: string[]): E[] {
    return [...this.querySelectorAll<E>(names.join())].filter(
      (element) => element.closest('quilt-worksheet') === this,
    );
  }

  /** A length as it flows to parts that may have other units. One that cannot be read flows as it is, and is wrong there too. */
  #length = (raw: unknown): { text: unknown; inches?: Exact } => {
    if (isBlank(raw)) return { text: undefined };
    try {
      const inches = lengthOf(raw, this.lengthStyle);
      const text = asTyped(inches, this.lengthStyle);
      return { text: text.startsWith('≈') ? `${mixed(inches)} in` : text, inches };
    } catch (refusal) {
      if (!(refusal instanceof Refusal)) throw refusal;
      return { text: raw };
    }
  };

  /** Lets the sizes flow once through top, borders and the rest, and gathers what all take. One pass: nothing flows back. */
  #settle(): void {
    if (isAsServed(this)) return;
    const troubles: string[] = [];
    const declared = this.#held<QuiltFabric>('quilt-fabric:defined');
    const fabrics = new Map<string, QuiltFabric>();
    for (const fabric of declared) {
      const letter = textOf(fabric.letter).trim();
      if (letter && !fabrics.has(letter)) fabrics.set(letter, fabric);
    }

    /** A fabric's width, or the worksheet's. One that cannot be read is the narrowest, so that its part says so. */
    const widthOf = (letter: string): { width: unknown; inches: Exact; from: string } => {
      const own = fabrics.get(letter)?.fabricWidth;
      const from = isBlank(own) ? 'from the worksheet' : `fabric ${letter}`;
      const { text = '', inches } = this.#length(isBlank(own) ? this.fabricWidth : own);
      return { width: text || undefined, from, inches: inches ?? (text ? ZERO : usual) };
    };
    const usual = lengthOf(COTTON_WIDTH, this.lengthStyle);
    /** The narrowest of a part's fabrics, so that none of its cloth is short. */
    const narrowest = (letters: string[]): ReturnType<typeof widthOf> =>
      (letters.length ? letters : ['']).map(widthOf).sort((a, b) => a.inches.compare(b.inches))[0]!;

    let size: Record<string, unknown> = {
      width: this.#length(this.width).text,
      length: this.#length(this.length).text,
    };
    let source = 'from the worksheet';
    const widths = Object.fromEntries(
      [...fabrics].flatMap(([letter, { fabricWidth }]) =>
        isBlank(fabricWidth) ? [] : [[letter, widthOf(letter).width]],
      ),
    );
    const lists = this.#held<QuiltCutting>('quilt-cutting');
    let caution = '';
    const give = (part: QuiltSheet): void => {
      const { units, shown, shrinkage, increment, currency } = this;
      const { width, from } = narrowest(lettersOf(part));
      const values = {
        units,
        shown,
        // What is bought by the piece is bought by itself.
        shared: part.localName !== 'quilt-batting' && !('sheet' in part && part.sheet),
        ...(part.localName === 'quilt-batting' ? {} : { shrinkage }),
        increment,
        currency,
        ...(part.localName === 'quilt-top' ? {} : size),
        ...(part.localName === 'quilt-backing' ? {} : { seam: this.#length(this.seam).text }),
        fabricWidth: width,
        ...(part.localName === 'quilt-cutting'
          ? { widths, usualWidth: widthOf('').width ?? COTTON_WIDTH, caution }
          : {}),
      };
      const flow: Flow = { values, from: { width: source, length: source, fabricWidth: from } };
      if (JSON.stringify(flow) !== JSON.stringify(part.flow)) part.flow = flow;
    };
    for (const name of FLOWING)
      for (const part of this.#held<Element>(name).filter(isPart)) {
        give(part);
        if (name === 'quilt-top') caution ||= cautionOf(part as QuiltTop, lists);
        const { finished } = part.result as { finished?: { width: string; length: string } };
        size = finished ? { width: `${finished.width} in`, length: `${finished.length} in` } : {};
        source = `from the ${name === 'quilt-top' ? 'quilt top' : 'borders'}`;
      }
    this.#held<Element>(...PARTS.filter((name) => !FLOWING.includes(name)))
      .filter(isPart)
      .forEach(give);
    const parts = this.#held<Element>(...PARTS).filter(isPart);
    for (const part of this.#given) if (!part.closest('quilt-worksheet')) part.flow = undefined;
    this.#given = parts;
    const [wide, long] = [size['width'], size['length']].map((side) => this.#length(side).inches);
    this.#size = wide && long ? `${length(wide, this.lengthStyle)} × ${length(long, this.lengthStyle)}.` : '';

    const unfinished = parts.flatMap(({ result: { errors }, calculator: { title } }) =>
      errors
        ? `${title} is not on the list yet: ${errors[0]!.message.startsWith(PLANNING) ? 'it is still being planned' : 'it has something to mend'}.`
        : [],
    );
    if (caution && !lists[0]) unfinished.push(caution);
    else if (caution && lists.some(({ isAsWritten }) => isAsWritten)) troubles.push(caution);
    const takes = parts.flatMap((part) => takesOf(part).map((take) => ({ ...take, part })));
    const nameOf = (letter: string): string => fabrics.get(letter)?.name ?? '';
    this.#pieces = takes.flatMap(({ fabric: letter, title, cuts }) =>
      cuts.map((cut) => ({
        letter,
        name: letter ? nameOf(letter) : title,
        title,
        cut,
      })),
    );
    const isItem = ({ part, item }: (typeof takes)[number]): boolean =>
      item !== undefined || part.localName === 'quilt-batting';
    const gathered = {
      troubles,
      unfinished,
      named: parts.flatMap(lettersOf),
      fabrics: declared.map(({ letter = '', name, price, fabricWidth }) => ({
        letter,
        name,
        price,
        fabricWidth,
      })),
      parts: takes
        .filter((take) => !isItem(take) && take.need !== '0')
        .map(({ part: _, cuts: _cuts, ...take }) => take),
      items: takes.filter(isItem).map(({ part: { result }, title, fabric, item, cost }) => ({
        title,
        fabric,
        text: item ?? result.buy!.text,
        cost: cost ?? (item ? undefined : (result as WorksheetResult).cost?.amount),
      })),
    };
    this.#swatches = new Map([...fabrics].map(([letter, { swatch }]) => [letter, swatch ?? '']));
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
