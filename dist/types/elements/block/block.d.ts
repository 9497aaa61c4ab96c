import { type BlockAnswer } from '../../calculators/block/shape.js';
import type { Calculator } from '../../calculators/calculator.js';
import { ListFace } from '../../face/list-face.js';
import type { Input } from '../../ledger/ledger.js';
/**
 * One block of a quilt, as a chart of fabric letters: what to cut, the cloth of each fabric, and the block drawn to scale. The
 * chart is the `<table>` inside the element, or typed into the sheet. Many pieces are planned in the background; `result` has
 * `errors` until their plan is ready, and a `change` event tells when it is.
 *
 * @tagname quilt-block
 */
export declare class QuiltBlock extends ListFace<BlockAnswer> {
    #private;
    static styles: import("lit").CSSResult[];
    static properties: import("lit").PropertyDeclarations;
    /**
     * The chart: rows of cells, or text with a line for each row and `|` between the cells. `A` is a patch of one fabric, `A/B` and
     * `A\B` are half-square triangles, `A/B/C/D` quarter-square triangles clockwise from the top, `B A B` a goose, `B in A` a square in
     * a square. Default: the table inside the element.
     */
    chart: string | unknown[][] | undefined;
    /** The block's finished side. A length. In a worksheet it follows the top's blocks. */
    block: string | number | undefined;
    /** How many blocks, a whole number. Default 1. */
    count: string | number | undefined;
    /**
     * How triangles are made: half-square triangles `two` or `eight` at a time, geese `one` or `four` at a time, such as `eight-four`.
     * Default `two-one`.
     */
    method: string | undefined;
    /** The marks of the ruler, which cut sizes fall on. Default `1/8 in`, or `1 mm` in metric. */
    mark: string | number | undefined;
    /** The week of a sew-along in which it is made, a whole number. Default none. */
    week: string | number | undefined;
    readonly calculator: Calculator<BlockAnswer>;
    protected readonly english: import("../../words/teller.js").Vocabulary;
    /** A name is what the block is called. Only in a form is it the name of a field. */
    protected get isSent(): boolean;
    constructor();
    /** The chart's row has a cell for each patch. */
    protected placeOf(id: string): ReturnType<ListFace['placeOf']>;
    /** A week is of use only in a sew-along. */
    protected standing(settings: Parameters<ListFace['standing']>[0]): ReturnType<ListFace['standing']>;
    protected typed: (event: Event) => void;
    protected focusIn: (event: {
        target: EventTarget | null;
    }) => void;
    protected keyDown: (event: KeyboardEvent) => void;
    get isAsWritten(): boolean;
    reckonInput(): Input;
}
declare global {
    interface HTMLElementTagNameMap {
        'quilt-block': QuiltBlock;
    }
}
