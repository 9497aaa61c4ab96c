import { type TemplateResult } from 'lit';
import type { Calculator } from '../../calculators/calculator.js';
import type { Input } from '../../ledger/ledger.js';
import { type Cells } from '../../face/export.js';
import type { Fault } from '../../face/form-field.js';
import type { Good } from '../../face/outcome.js';
import { ReadingFace } from '../../face/planning-face.js';
import { type WorksheetAnswer } from '../../workbook/shape.js';
import { Teller } from '../../words/teller.js';
/**
 * One quilt: the top's size flows to its borders, the bordered size to backing, binding and batting, and all that the parts
 * take comes together in one shopping list, with prices, kits and a fabric key. An attribute on a part wins over what flows.
 *
 * @tagname quilt-worksheet
 * @slot - The quilt's parts and fabrics, in any order and any markup.
 */
export declare class QuiltWorksheet extends ReadingFace<WorksheetAnswer> {
    #private;
    static styles: import("lit").CSSResult[];
    static properties: import("lit").PropertyDeclarations;
    /** How many kits to cut, for a shop. Default none. */
    kits: string | number | undefined;
    /** How much cloth a bolt holds. A length. Default `15 yd`, or `13.5 m` in metric. */
    bolt: string | number | undefined;
    readonly calculator: Calculator<WorksheetAnswer>;
    protected readonly english: import("../../words/teller.js").Vocabulary;
    constructor();
    connectedCallback(): void;
    protected get switchable(): boolean;
    protected willUpdate(): void;
    /** What it lacks may be what the author left out; but not what the reader has to write. */
    protected fault(): Fault | undefined;
    protected putsOff(): boolean;
    /** Gives its parts their sizes, if something is still to be read. */
    settle(): void;
    reckonInput(): Input;
    /** Lets the sizes flow through the parts, and gathers what all take. */
    protected readInside(): void;
    /** It says what its parts say, in their words. */
    get teller(): Teller;
    protected render(): TemplateResult;
    protected more(good: Good<WorksheetAnswer>): unknown;
    protected cells(good: Good<WorksheetAnswer>): Cells;
    /** The shopping list and the cut list. */
    protected sheetLists({ answer, reckoning, t }: Good<WorksheetAnswer>): Cells;
    protected paper: (good: Good<WorksheetAnswer>) => TemplateResult;
}
declare global {
    interface HTMLElementTagNameMap {
        'quilt-worksheet': QuiltWorksheet;
    }
}
