import type { TemplateResult } from 'lit';
import { type BlockAnswer } from '../../calculators/block/shape.js';
import type { Calculator } from '../../calculators/calculator.js';
import type { CellState } from '../../face/cell.js';
import { GridFace } from '../../face/grid-face.js';
import type { Input } from '../../ledger/ledger.js';
/**
 * One block of a quilt, as a chart of fabric letters: what to cut, the cloth of each fabric, and the block drawn to scale. The
 * chart is the `<table>` inside the element, or typed into the sheet. Many pieces are planned in the background; `result` has
 * `errors` until their plan is ready, and a `change` event tells when it is.
 *
 * @tagname quilt-block
 */
export declare class QuiltBlock extends GridFace<BlockAnswer> {
    #private;
    static styles: import("lit").CSSResult[];
    static properties: {
        fills: {
            type: BooleanConstructor;
        };
    };
    /**
     * The chart: rows of cells, or text with a line for each row and `|` between the cells. `A` is a patch of one fabric, `A/B` and
     * `A\B` are half-square triangles, `A/B/C/D` quarter-square triangles clockwise from the top, `B A B` a goose, `B in A` a square in
     * a square. Default: the table inside the element.
     */
    chart: string | unknown[][] | undefined;
    /** The block's finished side. A length. In a worksheet it follows the top's blocks. */
    block: string | number | undefined;
    /** How many blocks, a whole number. If a worksheet has only one block, it fills all the places of the top. Default 1. */
    count: string | number | undefined;
    /** In a worksheet: without a `count`, it fills the places of the top that the other blocks leave. Default false. */
    fills: boolean;
    /**
     * How triangles are made. The first word is for half-square triangles, `two` or `eight` at a time, and the second for geese, `one`
     * or `four` at a time: `eight-four`. Or `strips`: rows of equal patches are cut across from strips that are sewn together.
     * Default `two-one`.
     */
    method: string | undefined;
    /**
     * What it is cut from: `fat-quarter`, `fat-eighth`, or a size like `18 x 20`. Default: what the worksheet’s fabrics are bought in,
     * or cloth by length.
     */
    sheet: string | undefined;
    /** The prints have a right way up, so pieces may not be turned. Default false. */
    oneWay: boolean;
    /** The marks of the ruler, which cut sizes fall on. Default `1/8 in`, or `1 mm` in metric. */
    mark: string | number | undefined;
    /** The week of a sew-along in which it is made, a whole number. Default none. */
    week: string | number | undefined;
    readonly calculator: Calculator<BlockAnswer>;
    protected readonly english: import("../../words/teller.js").Vocabulary;
    /** A name is what the block is called. Only in a form is it the name of a field. */
    protected get isSent(): boolean;
    get called(): string;
    constructor();
    protected readonly gridKey = "chart";
    protected readonly mostRows = 24;
    /** Whether the reader may change how many blocks there are. */
    get isCounted(): boolean;
    /** Changes how many blocks there are, as if the reader had typed it. */
    countAs(many: number): void;
    /** The chart's row has a cell for each patch. */
    protected grid(state: CellState): TemplateResult | undefined;
    protected writeGrid(rows: string[][]): string;
    get isAsWritten(): boolean;
    reckonInput(): Input;
}
declare global {
    interface HTMLElementTagNameMap {
        'quilt-block': QuiltBlock;
    }
}
