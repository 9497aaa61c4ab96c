import { html, nothing, type TemplateResult } from 'lit';
import { styleMap } from 'lit/directives/style-map.js';
import { lengthOf } from '../../drawing/picture.js';
import type { Style } from '../../measure/format.js';
import type { Input } from '../../reckon/book.js';
import { reckonWorksheet, worksheetFields, type FabricInput, type ItemInput, type PartInput, type WorksheetResult } from '../../reckon/worksheet.js';
import { BackgroundPlans } from '../../sheet/background-plans.js';
import { propertiesOf, type Calculator, type Flow, type Listing } from '../../sheet/calculator.js';
import { QuiltSheet } from '../../sheet/sheet.js';
import type { QuiltFabric } from '../fabric/fabric.js';

/** The calculators a worksheet holds, in the order the quilt's size flows through them. */
const FLOWING = ['quilt-top', 'quilt-borders'];
const PARTS = [...FLOWING, 'quilt-backing', 'quilt-binding', 'quilt-batting', 'quilt-cutting'];

/** A part that has been defined; one that has not yet is left out until it is. */
const isPart = (element: Element): element is QuiltSheet => 'takes' in element;

const shopping = ({ fabrics, items, total }: WorksheetResult, style: Style): Listing => {
  const priced = fabrics.some(({ cost }) => cost);
  return {
    caption: 'Shopping list',
    head: ['Fabric', 'For', 'Needed', 'Buy', ...(priced ? ['Price', 'Cost'] : [])],
    rows: [
      ...fabrics.map(({ letter, name, parts, need, buy, price = '', cost = '' }) => [
        [letter, name].filter(Boolean).join(' · ') || '–',
        parts.map(({ title }) => title.toLowerCase()).join(', '),
        lengthOf(need, style),
        buy.text,
        ...(priced ? [price, cost] : []),
      ]),
      ...items.map(({ title, text, cost = '' }) => [title, '', '', text, ...(priced ? ['', cost] : [])]),
      ...(total ? [['Total', '', '', '', '', total]] : []),
    ],
  };
};

/**
 * One quilt: the top's size flows to its borders, the bordered size to backing, binding and batting, and all that the parts
 * take comes together in one shopping list, with prices, kits and a fabric key. An attribute on a part wins over what flows.
 *
 * @tagname quilt-worksheet
 * @slot - The quilt's parts and fabrics, in any order and any markup.
 */
export class QuiltWorksheet extends QuiltSheet<WorksheetResult> {
  static override properties = propertiesOf(worksheetFields);

  /** How many kits to cut, for a shop. Default none. */
  declare kits: string | number | undefined;
  /** How much cloth a bolt holds. A length. Default `15 yd`. */
  declare bolt: string | number | undefined;

  #parts: PartInput[] = [];
  #items: ItemInput[] = [];
  #fabrics: FabricInput[] = [];
  #troubles: string[] = [];
  #gathered = '';
  readonly #plans = new BackgroundPlans((ready) => {
    this.reckonAgain();
    if (ready) this.tell('change');
  });
  readonly #watch = new MutationObserver(() => this.#settle());

  protected override readonly calculator: Calculator<WorksheetResult> = {
    title: 'Shopping list',
    fields: worksheetFields,
    reckon: (input) => reckonWorksheet(input, this.#plans.plan),
    headline: ({ total, fabrics, items }) => (total ? ['In all', total] : ['Buy', `${fabrics.length + items.length} things`]),
    draw: () => [],
    listings: (result, style) => [shopping(result, style)],
  };

  override connectedCallback(): void {
    super.connectedCallback();
    this.#watch.observe(this, { childList: true, subtree: true, attributes: true });
    for (const type of ['input', 'change']) this.addEventListener(type, this.#heard);
    for (const name of PARTS) void customElements.whenDefined(name).then(() => this.#settle());
    this.#settle();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#watch.disconnect();
    this.#plans.stop();
  }

  #heard = ({ target }: Event): void => {
    if (target !== this) this.#settle();
  };

  protected override willUpdate(): void {
    this.#settle();
  }

  protected override reckonInput(): Input {
    return { ...super.reckonInput(), fabrics: this.#fabrics, parts: this.#parts, items: this.#items, troubles: this.#troubles } as Input;
  }

  #held = (...names: string[]): QuiltSheet[] => [...this.querySelectorAll(names.join())].filter(isPart).filter((part) => part.closest('quilt-worksheet') === this);

  /** Lets the sizes flow once through top, borders and the rest, and gathers what all take. One pass: nothing flows back. */
  #settle(): void {
    const fabrics = [...this.querySelectorAll<QuiltFabric>('quilt-fabric')];
    const troubles: string[] = [];
    const byLetter = new Map<string, QuiltFabric>();
    for (const fabric of fabrics) {
      const letter = fabric.letter?.trim() ?? '';
      if (!letter) troubles.push('A fabric has no letter. Write letter="A".');
      else if (byLetter.has(letter)) troubles.push(`Two fabrics have the letter ${letter}; the first is used. Give the other a letter of its own.`);
      else byLetter.set(letter, fabric);
    }

    let size: Record<string, unknown> = { width: this.width, length: this.length };
    let source = this.width === undefined ? '' : 'from the worksheet';
    const give = (part: QuiltSheet): void => {
      const letter = (part.fabric ?? '').split(/[\s,]+/)[0]!;
      const { units, shrinkage, increment, currency, seam } = this;
      const values = {
        units,
        ...(part.localName === 'quilt-batting' ? {} : { shrinkage }),
        increment,
        currency,
        ...(part.localName === 'quilt-top' ? {} : size),
        ...(part.localName === 'quilt-backing' ? {} : { seam }),
        fabricWidth: byLetter.get(letter)?.fabricWidth ?? this.fabricWidth,
      };
      const from = { width: source, length: source, fabricWidth: byLetter.get(letter)?.fabricWidth ? `fabric ${letter}` : 'from the worksheet' };
      const flow: Flow = { values, from };
      if (JSON.stringify(flow) !== JSON.stringify(part.flow)) part.flow = flow;
    };
    for (const name of FLOWING)
      for (const part of this.#held(name)) {
        give(part);
        const { finished } = part.result as { finished?: { width: string; length: string } };
        size = finished ? { width: `${finished.width} in`, length: `${finished.length} in` } : {};
        source = `from the ${name === 'quilt-top' ? 'quilt top' : 'borders'}`;
      }
    const others = this.#held(...PARTS.filter((name) => !FLOWING.includes(name)));
    others.forEach(give);

    const all = this.#held(...PARTS);
    const takes = all.flatMap((part) => part.takes.map((take) => ({ part, ...take })));
    for (const part of all)
      if (part.result.errors) troubles.push(`${part.calculatorTitle} is not on the list yet: it has something to mend.`);
    const isItem = ({ part, item }: { part: QuiltSheet; item?: string }): boolean => item !== undefined || part.localName === 'quilt-batting';
    const items = takes.filter(isItem).map(({ part, title, item, cost, fabric }) => {
      const { buy, cost: own } = part.result as { buy?: { text: string }; cost?: { amount: string } };
      return { title: item && fabric ? `${title}, fabric ${fabric}` : title, text: item ?? buy!.text, cost: cost ?? own?.amount };
    });
    const parts = takes
      .filter((take) => !isItem(take) && take.need !== '0')
      .map(({ title, fabric, need, width, pieces, washed }) => ({ title, fabric, need, width, washed, ...(pieces && { pieces }) }));
    const declared = [...byLetter].map(([letter, { name, fabricWidth, price }]) => ({ letter, name, fabricWidth, price }));
    const gathered = JSON.stringify([parts, items, declared, troubles]);
    if (gathered === this.#gathered) return;
    this.#gathered = gathered;
    [this.#parts, this.#items, this.#fabrics, this.#troubles] = [parts, items, declared, troubles];
    this.requestUpdate();
  }

  protected override render(): TemplateResult {
    return html`<slot></slot>${super.render()}`;
  }

  /** The fabric key, with a box for each swatch; on paper also each part's cut list and layout. */
  protected override more({ fabrics }: WorksheetResult): unknown {
    const swatches = new Map([...this.querySelectorAll<QuiltFabric>('quilt-fabric')].map(({ letter, swatch }) => [letter, swatch]));
    const box = (letter: string): TemplateResult => {
      const swatch = swatches.get(letter);
      const isColour = !!swatch && CSS.supports('color', swatch);
      return html`<td class="swatch" style=${styleMap(isColour ? { background: swatch } : {})}>${swatch && !isColour ? html`<img src=${swatch} alt="" />` : nothing}</td>`;
    };
    return html`${fabrics.length
        ? html`<table part="list" class="key">
            <caption>Fabric key</caption>
            <tbody>
              ${fabrics.map(({ letter, name, buy }) => html`<tr>${box(letter)}<th scope="row">${letter || '–'}</th><td>${name}</td><td>${buy.text}</td></tr>`)}
            </tbody>
          </table>`
        : nothing}
      <div class="paper">${this.#held(...PARTS).map((part) => part.paper)}</div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'quilt-worksheet': QuiltWorksheet;
  }
}
