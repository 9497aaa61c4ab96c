import type { TemplateResult } from 'lit';
import type { Calculator } from '../../calculators/calculator.js';
import {
  asNamed,
  CELLS,
  cutRows,
  hasHead,
  inWay,
  isEmptyRow,
  isUnfinishedRow,
  writeCutRows,
  type CutCell,
  type CutRow,
} from '../../calculators/cutting/cut-cells.js';
import { cutting } from '../../calculators/cutting/cutting.js';
import { reckon } from '../../calculators/cutting/reckon.js';
import { cuttingFields, say, type CuttingAnswer } from '../../calculators/cutting/shape.js';
import type { FieldKind } from '../../ledger/field.js';
import type { Input } from '../../ledger/ledger.js';
import type { Issue } from '../../ledger/refusal.js';
import { propertiesOf } from '../../face/calculator.js';
import type { CellState } from '../../face/cell.js';
import { blockOf, isOfGrid, placeOf, withBlock, type GridPlace } from '../../face/grid.js';
import { GridFace } from '../../face/grid-face.js';
import { isAsServed } from '../../face/server.js';
import type { Table } from '../../face/table.js';
import { cutting as words } from '../../words/en/cutting.js';
import { inEnglish } from '../../words/en/english.js';
import { isAboutCell, isAboutRow } from './faults.js';
import { listGrid, listStyles, rowOf, textsOf } from './grid.js';

/** Fabric, piece, cut size, how many: so many cells has a line of a list without a head. */
const WHOLE = 4;

/** Whether a pasted text is a list with columns of its own. */
const isWholeList = (text: string, [, at]: GridPlace): boolean =>
  !text.includes('\t') ||
  (at === 0 && (hasHead(text) || blockOf(text).every(({ length }) => length === WHOLE)));

/** The rows without empty ones at the end. */
const withoutEnd = (texts: string[][]): string[][] =>
  texts.slice(0, texts.findLastIndex((row) => !isEmptyRow(rowOf(row))) + 1);

/**
 * A cutting plan: strips to cut, what comes from each, and the cloth or sheets to buy, drawn to scale. The cut list is the
 * `<table>` inside the element, or typed into the sheet, a row of cells for each piece. A long list is planned in the background; `result` has
 * `errors` until its plan is ready, and a `change` event tells when it is.
 *
 * @tagname quilt-cutting
 */
export class QuiltCutting extends GridFace<CuttingAnswer> {
  static override styles = [...GridFace.styles, listStyles];
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

  protected override readonly gridKey = 'list';
  protected override readonly mostRows = 100;
  protected override readonly entersDown = true;

  /** The list's row has a row of cells for each piece. */
  protected override grid(state: CellState): TemplateResult | undefined {
    const written = cutRows(state.text);
    const rows =
      this.liveRows?.map(rowOf) ?? (written && written.length <= this.mostRows ? written : undefined);
    const { entered, typeIn } = this;
    if (!rows) return undefined;
    const issue = this.#issue(this.said);
    const isWrong = (row: number, cell: CutCell): boolean => !!issue && isAboutCell(issue, rows, row, cell);
    return listGrid(state, { rows, fabrics: this.#fabricsIn(rows), isWrong, entered, typeIn });
  }

  protected override writeGrid(rows: string[][]): string {
    return writeCutRows(rows.map(rowOf));
  }

  /** The name of a piece and the choice beside it say the same. */
  protected override afterTyping(rows: string[][], [row, at]: GridPlace): string[][] {
    const cell = CELLS[at];
    const now = (typed: CutRow): CutRow =>
      cell === 'way' ? inWay(typed, typed.way ?? '') : cell === 'piece' ? asNamed(typed) : typed;
    const texts = rows.map((all, which) => (which === row ? textsOf(now(rowOf(all))) : all));
    return withoutEnd(texts);
  }

  /** A whole list has its own columns. Any other block of cells goes into the cells from this one on. */
  protected override afterPasting(rows: string[][], place: GridPlace, text: string): string[][] {
    const list = isWholeList(text, place) ? cutRows(text) : undefined;
    const block = list?.map(textsOf) ?? blockOf(text);
    const [row] = place;
    const pasted = withBlock(rows, list ? [row, 0] : place, block);
    return withoutEnd(pasted.map((texts) => textsOf(asNamed(rowOf(texts)))));
  }

  /** Of the row that the reader is in, we do not say yet what it lacks. */
  protected override isBegunRow(texts: string[][], row: number): boolean {
    const rows = texts.map(rowOf);
    const shown = rows[row];
    const issue = this.#issue(this.outcome.reckoning.issues);
    return !!shown && !!issue && !isEmptyRow(shown) && isUnfinishedRow(shown) && isAboutRow(issue, rows, row);
  }

  #issue(issues: Issue[]): Issue | undefined {
    return issues.find(({ input }) => input === this.gridKey);
  }

  protected override kindOf(input: HTMLInputElement): FieldKind {
    const cell = isOfGrid(input) && CELLS[placeOf(input)[1]];
    return cell === 'width' || cell === 'length'
      ? 'length'
      : cell === 'count'
        ? 'count'
        : super.kindOf(input);
  }

  /** The fabrics of the worksheet and the letters that are in the list. Undefined if no fabric is declared. */
  #fabricsIn(rows: CutRow[]): Record<string, string> | undefined {
    const { names = {} } = this.flow?.values ?? {};
    const declared = Object.entries(names as Record<string, string>);
    if (!declared.length) return undefined;
    const fabrics: Record<string, string> = { '': this.teller.say(say('noFabric')) };
    for (const [letter, name] of declared) fabrics[letter] = name ? `${letter} · ${name}` : letter;
    for (const { fabric = '' } of rows) fabrics[fabric] ??= fabric;
    return fabrics;
  }

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
