import { type TemplateResult } from 'lit';
import type { Input } from '../../reckon/answer.js';
import { type WorksheetResult } from '../../reckon/worksheet.js';
import { BackgroundSheet } from '../../sheet/background-sheet.js';
import { type Calculator } from '../../sheet/calculator.js';
import { type Cells } from '../../sheet/export.js';
import type { Fault } from '../../sheet/form-field.js';
/**
 * One quilt: the top's size flows to its borders, the bordered size to backing, binding and batting, and all that the parts
 * take comes together in one shopping list, with prices, kits and a fabric key. An attribute on a part wins over what flows.
 *
 * @tagname quilt-worksheet
 * @slot - The quilt's parts and fabrics, in any order and any markup.
 */
export declare class QuiltWorksheet extends BackgroundSheet<WorksheetResult> {
    #private;
    static styles: import("lit").CSSResult[];
    static properties: import("lit").PropertyDeclarations;
    /** How many kits to cut, for a shop. Default none. */
    kits: string | number | undefined;
    /** How much cloth a bolt holds. A length. Default `15 yd`. */
    bolt: string | number | undefined;
    readonly calculator: Calculator<WorksheetResult>;
    constructor();
    connectedCallback(): void;
    protected get switchable(): boolean;
    protected willUpdate(): void;
    /** What it lacks may be what the author left out; but not what the reader has to write. */
    protected fault(): Fault | undefined;
    protected putsOff(): boolean;
    /** Gives its parts their sizes, if something is still to be read. */
    settle(): void;
    protected reckonInput(): Input;
    /** Lets the sizes flow through the parts, and gathers what all take. */
    protected readInside(): void;
    protected render(): TemplateResult;
    protected more(result: WorksheetResult): unknown;
    protected cells(result: WorksheetResult): Cells;
    protected paper: (result: WorksheetResult) => TemplateResult;
}
declare global {
    interface HTMLElementTagNameMap {
        'quilt-worksheet': QuiltWorksheet;
    }
}
