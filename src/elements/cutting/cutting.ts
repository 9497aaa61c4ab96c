import type { Calculator } from '../../calculators/calculator.js';
import { cutting } from '../../calculators/cutting/cutting.js';
import { reckon } from '../../calculators/cutting/reckon.js';
import { cuttingFields, type CuttingAnswer } from '../../calculators/cutting/shape.js';
import type { Input } from '../../ledger/ledger.js';
import { propertiesOf } from '../../face/calculator.js';
import { ListFace } from '../../face/list-face.js';
import { isAsServed } from '../../face/server.js';
import type { Table } from '../../face/table.js';
import { cutting as words } from '../../words/en/cutting.js';
import { inEnglish } from '../../words/en/english.js';

/**
 * A cutting plan: strips to cut, what comes from each, and the cloth or sheets to buy, drawn to scale. The cut list is the
 * `<table>` inside the element, or typed or pasted into the sheet. A long list is planned in the background; `result` has
 * `errors` until its plan is ready, and a `change` event tells when it is.
 *
 * @tagname quilt-cutting
 */
export class QuiltCutting extends ListFace<CuttingAnswer> {
  static override properties = propertiesOf(cuttingFields);

  /** The cut list: rows of cells, or text with a line for each piece. Default: the table inside the element. */
  declare list: string | string[][] | undefined;
  /**
   * What it is cut from: `fat-quarter`, `fat-eighth`, or a size like `18 x 20`. Default: what the worksheet’s fabrics are bought in,
   * or cloth by length.
   */
  declare sheet: string | undefined;
  /** The print has a right way up, so pieces may not be turned. Default false. */
  declare oneWay: boolean;
  /** How long the ruler is. A length. Default `24 in`, or `60 cm` in metric. */
  declare ruler: string | number | undefined;
  /** The cutting mat. Default `24 x 36 in`, or `60 x 90 cm` in metric. */
  declare mat: string | undefined;
  /** The marks of the ruler, which cut sizes fall on. Default `1/8 in`, or `1 mm` in metric. */
  declare mark: string | number | undefined;
  /** The week of a sew-along in which it is cut, a whole number. Default none. */
  declare week: string | number | undefined;

  constructor() {
    super();
    this.oneWay = false;
  }

  override readonly calculator: Calculator<CuttingAnswer> = {
    ...cutting,
    reckon: (input) => (isAsServed(this) ? reckon(input) : this.plans.reckon((plan) => reckon(input, plan))),
  };
  protected override readonly english = inEnglish(words);

  override get isAsWritten(): boolean {
    return (this.list ?? null) === this.getAttribute('list');
  }

  override reckonInput(): Input {
    return { ...super.reckonInput(), ...this.surroundings(), list: this.list ?? this.#written };
  }

  #read: { from: Table; list: string[][] } | undefined;

  /** The texts in the author's own table. The list stays the same object while the table does. */
  get #written(): string[][] | undefined {
    const { table } = this;
    if (table && this.#read?.from !== table)
      this.#read = { from: table, list: table.map((cells) => cells.map(({ text }) => text)) };
    return table && this.#read?.list;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'quilt-cutting': QuiltCutting;
  }
}
