import type { TemplateResult } from 'lit';
import { reckon } from '../../calculators/block/reckon.js';
import { blockFields, type BlockAnswer } from '../../calculators/block/shape.js';
import { block } from '../../calculators/block/block.js';
import type { Calculator } from '../../calculators/calculator.js';
import type { CellState } from '../../face/cell.js';
import { propertiesOf } from '../../face/calculator.js';
import { GridFace } from '../../face/grid-face.js';
import { isAsServed } from '../../face/server.js';
import type { Input } from '../../ledger/ledger.js';
import { block as words } from '../../words/en/block.js';
import { inEnglish } from '../../words/en/english.js';
import { chartIn, grid, gridStyles, MOST_SHOWN } from './grid.js';

/** What a block's pieces come from. */
const WRITTEN = ['chart', 'count', 'block'] as const;

/**
 * One block of a quilt, as a chart of fabric letters: what to cut, the cloth of each fabric, and the block drawn to scale. The
 * chart is the `<table>` inside the element, or typed into the sheet. Many pieces are planned in the background; `result` has
 * `errors` until their plan is ready, and a `change` event tells when it is.
 *
 * @tagname quilt-block
 */
export class QuiltBlock extends GridFace<BlockAnswer> {
  static override styles = [...GridFace.styles, gridStyles];
  static override properties = { ...propertiesOf(blockFields), fills: { type: Boolean } };

  /**
   * The chart: rows of cells, or text with a line for each row and `|` between the cells. `A` is a patch of one fabric, `A/B` and
   * `A\B` are half-square triangles, `A/B/C/D` quarter-square triangles clockwise from the top, `B A B` a goose, `B in A` a square in
   * a square. Default: the table inside the element.
   */
  declare chart: string | unknown[][] | undefined;
  /** The block's finished side. A length. In a worksheet it follows the top's blocks. */
  declare block: string | number | undefined;
  /** How many blocks, a whole number. If a worksheet has only one block, it fills all the places of the top. Default 1. */
  declare count: string | number | undefined;
  /** In a worksheet: without a `count`, it fills the places of the top that the other blocks leave. Default false. */
  declare fills: boolean;
  /**
   * How triangles are made. The first word is for half-square triangles, `two` or `eight` at a time, and the second for geese, `one`
   * or `four` at a time: `eight-four`. Or `strips`: rows of equal patches are cut across from strips that are sewn together.
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

  override get called(): string {
    return this.name?.trim() || super.called;
  }

  constructor() {
    super();
    this.fills = false;
    this.oneWay = false;
  }

  protected override readonly gridKey = 'chart';
  protected override readonly mostRows = MOST_SHOWN;

  /** Whether the reader may change how many blocks there are. */
  get isCounted(): boolean {
    return !this.off && !this.locks('count');
  }

  /** Changes how many blocks there are, as if the reader had typed it. */
  countAs(many: number): void {
    this.change('count', `${many}`);
    this.tellBoth();
  }

  /** The chart's row has a cell for each patch. */
  protected override grid(state: CellState): TemplateResult | undefined {
    return grid(state, this.#isWrongAt);
  }

  protected override writeGrid(rows: string[][]): string {
    return chartIn(rows);
  }

  /** Whether a cell of the chart is wrong. If no single cell is, all are. */
  #isWrongAt = (row: number, at: number): boolean => {
    const issue = this.said.find(({ input }) => input === 'chart');
    if (!issue) return false;
    const place: { row?: unknown; cell?: unknown } = issue.values;
    return issue.code !== 'inCell' || (place.row === row + 1 && place.cell === at + 1);
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
