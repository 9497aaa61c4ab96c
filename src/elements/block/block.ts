import { isServer, type TemplateResult } from 'lit';
import { reckon } from '../../calculators/block/reckon.js';
import { blockFields, type BlockAnswer } from '../../calculators/block/shape.js';
import { block } from '../../calculators/block/block.js';
import type { Calculator } from '../../calculators/calculator.js';
import type { CellState } from '../../face/cell.js';
import { propertiesOf } from '../../face/calculator.js';
import { ListFace } from '../../face/list-face.js';
import { isAsServed } from '../../face/server.js';
import type { Input } from '../../ledger/ledger.js';
import { block as words } from '../../words/en/block.js';
import { inEnglish } from '../../words/en/english.js';
import { beyond, chartAround, chartWith, grid, gridStyles, isOfGrid } from './grid.js';

/** What a block's pieces come from. */
const WRITTEN = ['chart', 'count', 'block'] as const;

/**
 * One block of a quilt, as a chart of fabric letters: what to cut, the cloth of each fabric, and the block drawn to scale. The
 * chart is the `<table>` inside the element, or typed into the sheet. Many pieces are planned in the background; `result` has
 * `errors` until their plan is ready, and a `change` event tells when it is.
 *
 * @tagname quilt-block
 */
export class QuiltBlock extends ListFace<BlockAnswer> {
  static override styles = [...ListFace.styles, gridStyles];
  static override properties = propertiesOf(blockFields);

  /**
   * The chart: rows of cells, or text with a line for each row and `|` between the cells. `A` is a patch of one fabric, `A/B` and
   * `A\B` are half-square triangles, `A/B/C/D` quarter-square triangles clockwise from the top, `B A B` a goose, `B in A` a square in
   * a square. Default: the table inside the element.
   */
  declare chart: string | unknown[][] | undefined;
  /** The block's finished side. A length. In a worksheet it follows the top's blocks. */
  declare block: string | number | undefined;
  /** How many blocks, a whole number. Default 1. */
  declare count: string | number | undefined;
  /**
   * How triangles are made: half-square triangles `two` or `eight` at a time, geese `one` or `four` at a time, such as `eight-four`.
   * Default `two-one`.
   */
  declare method: string | undefined;
  /**
   * What it is cut from: `fat-quarter`, `fat-eighth`, or a size like `18 x 20`. Default: what the worksheet’s fabrics are bought in,
   * or cloth by length.
   */
  declare sheet: string | undefined;
  /** The prints have a right way up, so pieces may not be turned. Default false. */
  declare oneWay: boolean;
  /** The marks of the ruler, which cut sizes fall on. Default `1/8 in`, or `1 mm` in metric. */
  declare mark: string | number | undefined;
  /** The week of a sew-along in which it is made, a whole number. Default none. */
  declare week: string | number | undefined;

  override readonly calculator: Calculator<BlockAnswer> = {
    ...block,
    reckon: (input) => (isAsServed(this) ? reckon(input) : this.plans.reckon((plan) => reckon(input, plan))),
  };
  protected override readonly english = inEnglish(words);

  /** A name is what the block is called. Only in a form is it the name of a field. */
  protected override get isSent(): boolean {
    return super.isSent && !!this.form;
  }

  constructor() {
    super();
    this.oneWay = false;
    if (!isServer) this.addEventListener('paste', this.#pasted);
  }

  /** The chart's row has a cell for each patch. */
  protected override placeOf(id: string): ReturnType<ListFace['placeOf']> {
    const place = super.placeOf(id);
    const show = (state: CellState): TemplateResult | undefined => grid(state, this.#isWrongAt);
    return id === 'chart' && place.field
      ? { ...place, field: { ...place.field, show } as typeof place.field }
      : place;
  }

  /** Whether a cell of the chart is wrong. If no single cell is, all are. */
  #isWrongAt = (row: number, at: number): boolean => {
    const issue = this.said.find(({ input }) => input === 'chart');
    if (!issue) return false;
    const place: { row?: unknown; cell?: unknown } = issue.values;
    return issue.code !== 'inCell' || (place.row === row + 1 && place.cell === at + 1);
  };

  /** Takes a chart that the reader changed in one of its cells. */
  #take(chart: string): void {
    if (this.editing) this.editing.text = chart;
    this.change('chart', chart);
    this.requestUpdate();
  }

  readonly #typed = this.typed;
  protected override typed = (event: Event): void => {
    const { target } = event;
    if (isOfGrid(target)) this.#take(chartAround(target));
    else this.#typed(event);
  };

  /** The text in the cell of the chart that has the focus, before anything was typed. */
  #before = '';

  readonly #focusIn = this.focusIn;
  protected override focusIn = (event: { target: EventTarget | null }): void => {
    this.#focusIn(event);
    const { target } = event;
    if (!isOfGrid(target) || !this.editing) return;
    this.editing.text = this.editing.before = chartAround(target);
    this.#before = target.value;
  };

  readonly #keyDown = this.keyDown;
  protected override keyDown = (event: KeyboardEvent): void => {
    const { target, key } = event;
    const step = key === 'ArrowDown' ? 1 : key === 'ArrowUp' ? -1 : 0;
    const next = step && !event.altKey && isOfGrid(target) ? beyond(target, step) : undefined;
    if (!next) {
      this.#keyDown(event);
      // The whole chart was put back, but into this one cell.
      if (key === 'Escape' && isOfGrid(target)) target.value = this.#before;
      return;
    }
    next.focus();
    next.select();
    event.preventDefault();
  };

  /** A block of cells goes into the cells from this one on. */
  #pasted = (event: ClipboardEvent): void => {
    const [target] = event.composedPath();
    const text = event.clipboardData?.getData('text/plain') ?? '';
    if (!isOfGrid(target) || !/[\t\n]/.test(text)) return;
    event.preventDefault();
    this.#take(chartWith(target, text));
    this.tell('input');
  };

  override get isAsWritten(): boolean {
    return WRITTEN.every((key) => (this[key] ?? null) === this.getAttribute(key));
  }

  override reckonInput(): Input {
    return {
      ...super.reckonInput(),
      ...this.surroundings(),
      name: this.name,
      chart: this.chart ?? this.table,
    };
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'quilt-block': QuiltBlock;
  }
}
