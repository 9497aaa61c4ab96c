import { drawCutting } from '../../drawing/cutting.js';
import { lengthOf } from '../../drawing/picture.js';
import type { Style } from '../../measure/format.js';
import { planCloth, planClothAsync } from '../../cutting/plan.js';
import type { Input } from '../../reckon/book.js';
import { writeCutList } from '../../reckon/cut-list.js';
import { cuttingFields, reckonCutting, type CuttingResult, type Planner } from '../../reckon/cutting.js';
import { propertiesOf, type Calculator, type Listing } from '../../sheet/calculator.js';
import { QuiltSheet } from '../../sheet/sheet.js';

const strips = ({ fabrics }: CuttingResult, style: Style): Listing => ({
  caption: 'Strips, from the top of the cloth',
  head: ['Fabric', 'Strips', 'Height', 'What each gives'],
  rows: fabrics.flatMap(({ fabric, strips }) =>
    strips.map(({ count, height, gives }) => [
      fabric || '–',
      `${count}`,
      lengthOf(height, style),
      gives.map(({ piece, count }) => `${count} × ${piece}`).join(', '),
    ]),
  ),
});

/** The cut list in the author's own table; a table inside one of its cells is that cell's affair. */
const listIn = (element: Element): string | undefined => {
  const table = element.querySelector('table');
  return table ? writeCutList([...table.rows].map(({ cells }) => [...cells].map((cell) => cell.textContent))) : undefined;
};

/** So few pieces are planned at once; the page does not feel it. */
const PLANNED_AT_ONCE = 30;
/** Plans kept, so that going back to an earlier list is free. */
const MOST_KEPT = 20;

/**
 * A cutting plan: strips to cut, what comes from each, and the cloth or sheets to buy, drawn to scale. The cut list is the
 * `<table>` inside the element, or typed or pasted into the sheet. A long list is planned in the background; `result` has
 * `errors` until its plan is ready, and a `change` event tells when it is.
 *
 * @tagname quilt-cutting
 */
export class QuiltCutting extends QuiltSheet<CuttingResult> {
  static override properties = propertiesOf(cuttingFields);

  /** The cut list: rows of cells, or text with a line a piece. Default: the table inside the element. */
  declare list: string | string[][] | undefined;
  /** What it is cut from: `fat-quarter`, `fat-eighth`, or a size like `18 x 20`. Default: cloth by length. */
  declare sheet: string | undefined;
  /** The print has a right way up, so pieces may not be turned. Default false. */
  declare oneWay: boolean;
  /** How long the ruler is. A length. Default `24 in`. */
  declare ruler: string | number | undefined;
  /** The cutting mat. Default `24 x 36`. */
  declare mat: string | undefined;
  /** The marks of the ruler, which cut sizes fall on. Default `1/8 in`, or `1 mm` in metric. */
  declare mark: string | number | undefined;

  readonly #plans = new Map<string, ReturnType<Planner>>();
  #job: { key: string; stop: AbortController; done: number } | undefined;
  #written: string | undefined;
  readonly #watch = new MutationObserver(() => this.#read());

  protected override readonly calculator: Calculator<CuttingResult> = {
    title: 'Cutting plan',
    fields: cuttingFields,
    reckon: (input) => reckonCutting(input, this.#plan),
    draw: drawCutting,
    listings: (result, style) => [strips(result, style)],
  };

  override connectedCallback(): void {
    super.connectedCallback();
    this.#watch.observe(this, { childList: true, characterData: true, subtree: true });
    this.#read();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#watch.disconnect();
    this.#job?.stop.abort();
    this.#job = undefined;
  }

  #read(): void {
    this.#written = listIn(this);
    this.requestUpdate();
  }

  protected override reckonInput(): Input {
    return { ...super.reckonInput(), list: this.list ?? this.#written };
  }

  #plan: Planner = (pieces, cloth) => {
    const key = JSON.stringify([pieces, cloth], (_, value: unknown) => (typeof value === 'bigint' ? `${value}` : value));
    const ready = this.#plans.get(key);
    if (ready) return ready;
    if (pieces.reduce((all, { count }) => all + count, 0) <= PLANNED_AT_ONCE) return this.#keep(key, planCloth(pieces, cloth));
    if (this.#job?.key !== key) void this.#start(key, pieces, cloth);
    return { ok: false, message: `The layout is being planned: ${Math.round(this.#job!.done * 100)} % done.` };
  };

  #keep(key: string, plan: ReturnType<Planner>): ReturnType<Planner> {
    if (this.#plans.size >= MOST_KEPT) this.#plans.delete(this.#plans.keys().next().value!);
    this.#plans.set(key, plan);
    return plan;
  }

  /** Plans in the background; a newer list stops it. */
  async #start(key: string, ...asked: Parameters<Planner>): Promise<void> {
    this.#job?.stop.abort();
    const job = (this.#job = { key, stop: new AbortController(), done: 0 });
    try {
      const plan = await planClothAsync(...asked, {
        signal: job.stop.signal,
        onProgress: (done) => {
          if (done - job.done < 0.1) return;
          job.done = done;
          this.reckonAgain();
        },
      });
      this.#keep(key, plan);
    } catch (reason) {
      if (!job.stop.signal.aborted) throw reason;
      return;
    }
    this.#job = undefined;
    this.reckonAgain();
    this.dispatchEvent(new Event('change', { bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'quilt-cutting': QuiltCutting;
  }
}
