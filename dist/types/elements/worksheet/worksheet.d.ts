import { type PropertyDeclarations, type TemplateResult } from 'lit';
import type { Calculator } from '../../calculators/calculator.js';
import type { Input } from '../../ledger/ledger.js';
import type { Message } from '../../measure/message.js';
import { type Cells } from '../../face/export.js';
import type { Fault } from '../../face/form-field.js';
import type { Good } from '../../face/outcome.js';
import { ReadingFace } from '../../face/planning-face.js';
import { type Swatches } from '../../face/swatch.js';
import { type WorksheetAnswer } from '../../workbook/shape.js';
import type { QuiltParts } from '../../workbook/whole-quilt.js';
import { Teller } from '../../words/teller.js';
import type { WorkingRow } from '../../words/told.js';
/**
 * One quilt: the size of the top flows to the borders, and the size with borders to backing, binding and batting. The cloth of all
 * parts comes together in one shopping list, with prices, kits and a fabric key. An attribute on a part counts before what flows.
 *
 * @tagname quilt-worksheet
 * @slot - The quilt's parts and fabrics, in any order and any markup.
 */
export declare class QuiltWorksheet extends ReadingFace<WorksheetAnswer> {
    #private;
    static styles: import("lit").CSSResult[];
    static properties: PropertyDeclarations;
    /** How many kits to cut, for a shop. Default none. */
    kits: string | number | undefined;
    /** How much cloth a bolt holds. A length. Default `15 yd`, or `13.5 m` in metric. */
    bolt: string | number | undefined;
    /** The shopping list has a cell for every fabric, where the reader writes what she has of it. Default false. */
    atHand: boolean;
    readonly calculator: Calculator<WorksheetAnswer>;
    protected readonly english: import("../../words/teller.js").Vocabulary;
    protected readonly foldsLists = false;
    constructor();
    connectedCallback(): void;
    protected get switchable(): boolean;
    protected willUpdate(): void;
    /** An unfinished worksheet is valid if the author left something out, but not if the reader has to write something. */
    protected fault(): Fault | undefined;
    protected putsOff(): boolean;
    /** Gives the parts their sizes, if something has changed. */
    settle(): void;
    reckonInput(): Input;
    /** Lets the sizes flow through the parts, and gathers what they take. */
    protected readInside(): void;
    /** The teller, with the words of its parts, because it says what they say. */
    get teller(): Teller;
    protected typed: (event: Event) => void;
    protected changed: (event: Event) => void;
    /** A shop that writes prices may cut kits. It should not have to look for that. */
    protected isSetting(row: WorkingRow): boolean;
    /** Parts have their own sizes and cloth where nothing is written here for all of them, so none is missing. */
    protected standing(rows: WorkingRow[]): ReturnType<ReadingFace['standing']>;
    protected render(): TemplateResult;
    /** Under the question which block to make more or fewer of: a button for each block that can be. */
    protected under(note: Message): unknown;
    /** What there is of the quilt, for a picture of it. */
    get quilt(): QuiltParts;
    get swatches(): Swatches;
    /** The whole quilt as one picture. It is made only while somebody looks at it. */
    protected above(good: Good<WorksheetAnswer>): unknown;
    protected readyForPaper: () => Promise<unknown>;
    protected more(good: Good<WorksheetAnswer>): unknown;
    protected cells(good: Good<WorksheetAnswer>): Cells;
    /** The shopping list, the cut list and what is left over. */
    protected sheetLists({ answer, reckoning, t }: Good<WorksheetAnswer>): Cells;
    protected paper: (good: Good<WorksheetAnswer>) => TemplateResult;
}
declare global {
    interface HTMLElementTagNameMap {
        'quilt-worksheet': QuiltWorksheet;
    }
}
