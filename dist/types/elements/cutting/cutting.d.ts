import type { Calculator } from '../../calculators/calculator.js';
import { type CuttingAnswer } from '../../calculators/cutting/shape.js';
import type { Input } from '../../ledger/ledger.js';
import { ListFace } from '../../face/list-face.js';
/**
 * A cutting plan: strips to cut, what comes from each, and the cloth or sheets to buy, drawn to scale. The cut list is the
 * `<table>` inside the element, or typed or pasted into the sheet. A long list is planned in the background; `result` has
 * `errors` until its plan is ready, and a `change` event tells when it is.
 *
 * @tagname quilt-cutting
 */
export declare class QuiltCutting extends ListFace<CuttingAnswer> {
    #private;
    static properties: import("lit").PropertyDeclarations;
    /** The cut list: rows of cells, or text with a line for each piece. Default: the table inside the element. */
    list: string | string[][] | undefined;
    /** What it is cut from: `fat-quarter`, `fat-eighth`, or a size like `18 x 20`. Default: cloth by length. */
    sheet: string | undefined;
    /** The print has a right way up, so pieces may not be turned. Default false. */
    oneWay: boolean;
    /** How long the ruler is. A length. Default `24 in`, or `60 cm` in metric. */
    ruler: string | number | undefined;
    /** The cutting mat. Default `24 x 36 in`, or `60 x 90 cm` in metric. */
    mat: string | undefined;
    /** The marks of the ruler, which cut sizes fall on. Default `1/8 in`, or `1 mm` in metric. */
    mark: string | number | undefined;
    constructor();
    readonly calculator: Calculator<CuttingAnswer>;
    protected readonly english: import("../../words/teller.js").Vocabulary;
    get isAsWritten(): boolean;
    protected change(key: string, value: unknown): void;
    reckonInput(): Input;
}
declare global {
    interface HTMLElementTagNameMap {
        'quilt-cutting': QuiltCutting;
    }
}
