import { drawCutting } from '../../drawing/cutting.js';
import type { Input } from '../../reckon/answer.js';
import { cuttingFields, reckonCutting, type CuttingResult } from '../../reckon/cutting.js';
import { isBlank } from '../../reckon/fields.js';
import { BackgroundSheet } from '../../face/background-sheet.js';
import { propertiesOf, type Calculator } from '../../face/calculator.js';
import { isAsServed, tableOnServer } from '../../face/server.js';
import { stripList } from './strips.js';

/** The cut list in the author's own table; of a table inside one of its cells only that it is there. */
const listIn = (element: Element): string[][] | undefined => {
  const table = element.querySelector('table');
  return table
    ? [...table.rows].map(({ cells }) =>
        [...cells].map((cell) => (cell.querySelector('table') ? 'a table in a cell' : cell.textContent)),
      )
    : undefined;
};

const OTHER_PRICE =
  'The price was of what it was cut from before, and is left out. Write what a yard, a metre or a sheet costs now, like 12.50.';

/**
 * A cutting plan: strips to cut, what comes from each, and the cloth or sheets to buy, drawn to scale. The cut list is the
 * `<table>` inside the element, or typed or pasted into the sheet. A long list is planned in the background; `result` has
 * `errors` until its plan is ready, and a `change` event tells when it is.
 *
 * @tagname quilt-cutting
 */
export class QuiltCutting extends BackgroundSheet<CuttingResult> {
  static override properties = propertiesOf(cuttingFields);

  /** The cut list: rows of cells, or text with a line a piece. Default: the table inside the element. */
  declare list: string | string[][] | undefined;
  /** What it is cut from: `fat-quarter`, `fat-eighth`, or a size like `18 x 20`. Default: cloth by length. */
  declare sheet: string | undefined;
  /** The print has a right way up, so pieces may not be turned. Default false. */
  declare oneWay: boolean;
  /** How long the ruler is. A length. Default `24 in`. */
  declare ruler: string | number | undefined;
  /** The cutting mat. Default `24 x 36 in`. */
  declare mat: string | undefined;
  /** The marks of the ruler, which cut sizes fall on. Default `1/8 in`, or `1 mm` in metric. */
  declare mark: string | number | undefined;

  #written: string[][] | undefined = tableOnServer();
  /** What it was cut from when its price was written, where the reader changed that since. */
  #pricedFor: string | undefined;

  constructor() {
    super();
    this.oneWay = false;
  }

  override readonly calculator: Calculator<CuttingResult> = {
    title: 'Cutting plan',
    fields: cuttingFields,
    reckon: (input) =>
      isAsServed(this) ? reckonCutting(input) : this.plans.reckon((plan) => reckonCutting(input, plan)),
    draw: drawCutting,
    byPiece: () => !!this.sheet,
    listings: ({ fabrics }, style) => [stripList(fabrics, style)],
    takes: ({ fabrics }, letters) =>
      fabrics.map(({ fabric, need, sheets, buy, cost, width, sold, pieces }) => {
        const prefix = fabric && `${fabric} · `;
        const cuts = pieces.map((cut) => ({ ...cut, piece: cut.piece.slice(prefix.length) }));
        return {
          fabric: fabric || (letters[0] ?? ''),
          need,
          width,
          sold,
          cuts,
          pieces: cuts.map((cut) => ({ ...cut, turn: !this.oneWay })),
          ...(sheets && { item: buy.text, cost }),
        };
      }),
  };

  protected override readonly watched = { childList: true, characterData: true, subtree: true };

  protected override readInside(): void {
    this.#written = listIn(this);
    this.reckonAgain();
  }

  /** Whether the list is still the one that the page wrote. */
  get isAsWritten(): boolean {
    return (this.list ?? null) === this.getAttribute('list');
  }

  protected override change(key: string, value: unknown): void {
    if (key === 'price') this.#pricedFor = undefined;
    if (key === 'sheet') this.#pricedFor ??= this.sheet ?? '';
    super.change(key, value);
  }

  protected override reckonInput(): Input {
    const { widths, usualWidth, caution = '' } = this.flow?.values ?? {};
    const isOtherPrice = (this.#pricedFor ?? this.sheet ?? '') !== (this.sheet ?? '') && !isBlank(this.price);
    return {
      ...super.reckonInput(),
      caution: `${this.isAsWritten ? (caution as string) : ''} ${isOtherPrice ? OTHER_PRICE : ''}`.trim(),
      ...(isOtherPrice && { price: undefined }),
      list: this.list ?? this.#written,
      ...(isBlank(this.fabricWidth) && { widths, usualWidth }),
    };
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'quilt-cutting': QuiltCutting;
  }
}
