import type { TemplateResult } from 'lit';
import type { Calculator } from '../../calculators/calculator.js';
import { type CuttingAnswer } from '../../calculators/cutting/shape.js';
import type { FieldKind } from '../../ledger/field.js';
import type { Input } from '../../ledger/ledger.js';
import type { CellState } from '../../face/cell.js';
import { type GridPlace } from '../../face/grid.js';
import { GridFace } from '../../face/grid-face.js';
/**
 * A cutting plan: strips to cut, what comes from each, and the cloth or sheets to buy, drawn to scale. The cut list is the
 * `<table>` inside the element, or typed into the sheet, a row of cells for each piece. A long list is planned in the background; `result` has
 * `errors` until its plan is ready, and a `change` event tells when it is.
 *
 * @tagname quilt-cutting
 */
export declare class QuiltCutting extends GridFace<CuttingAnswer> {
    #private;
    static styles: import("lit").CSSResult[];
    static properties: import("lit").PropertyDeclarations;
    /** The cut list: rows of cells, or text with a line for each piece. Default: the table inside the element. */
    list: string | string[][] | undefined;
    /**
     * What it is cut from: `fat-quarter`, `fat-eighth`, or a size like `18 x 20`. Default: what the worksheet’s fabrics are bought in,
     * or cloth by length.
     */
    sheet: string | undefined;
    /** The print has a right way up, so pieces may not be turned. Default false. */
    oneWay: boolean;
    /** How long the ruler is. A length. Default `24 in`, or `60 cm` in metric. */
    ruler: string | number | undefined;
    /** The cutting mat. Default `24 x 36 in`, or `60 x 90 cm` in metric. */
    mat: string | undefined;
    /** The marks of the ruler, which cut sizes fall on. Default `1/8 in`, or `1 mm` in metric. */
    mark: string | number | undefined;
    /** The week of a sew-along in which it is cut, a whole number. Default none. */
    week: string | number | undefined;
    constructor();
    readonly calculator: Calculator<CuttingAnswer>;
    protected readonly english: import("../../words/teller.js").Vocabulary;
    protected readonly gridKey = "list";
    protected readonly mostRows = 100;
    protected readonly entersDown = true;
    /** The list's row has a row of cells for each piece. */
    protected grid(state: CellState): TemplateResult | undefined;
    protected writeGrid(rows: string[][]): string;
    /** The name of a piece and the choice beside it say the same. */
    protected afterTyping(rows: string[][], [row, at]: GridPlace): string[][];
    /** A whole list has its own columns. Any other block of cells goes into the cells from this one on. */
    protected afterPasting(rows: string[][], place: GridPlace, text: string): string[][];
    /** Of the row that the reader is in, we do not say yet what it lacks. */
    protected isBegunRow(texts: string[][], row: number): boolean;
    protected kindOf(input: HTMLInputElement): FieldKind;
    get isAsWritten(): boolean;
    reckonInput(): Input;
}
declare global {
    interface HTMLElementTagNameMap {
        'quilt-cutting': QuiltCutting;
    }
}
