import { type PropertyDeclarations, type TemplateResult } from 'lit';
import { type Style } from '../measure/format.js';
import { type Units } from '../measure/units.js';
import type { Answer, Input, Refused } from '../reckon/book.js';
import { type Calculator, type Flow } from './calculator.js';
import { type Cells } from './export.js';
import { FormField, type Fault } from './form-field.js';
/**
 * The shared face of every calculator: the answer, the rows with their working, the drawing, the cut list. It reckons
 * again as the reader types, keeps what she typed where it is wrong, and leaves the last good answer marked stale.
 *
 * @attr {boolean} disabled - No cell can be changed, and a form sends nothing of it.
 * @fires input - Something was typed; `result` already follows it.
 * @fires change - A cell was left with another value.
 * @csspart sheet - The whole sheet.
 * @csspart answer - The answer, and what belongs to it.
 * @csspart amount - The amount to buy, in the largest type.
 * @csspart table - The rows.
 * @csspart label - What a row is.
 * @csspart cell - A cell to type in.
 * @csspart value - A reckoned value.
 * @csspart how - How a value was got.
 * @csspart figure - What holds a drawing.
 * @csspart error - What is wrong in a row.
 * @csspart drawing - The drawing to scale.
 * @csspart list - The cut list and other lists.
 * @csspart action - Copy, CSV and print.
 * @cssprop [--quilt-accent=#a63d40] - Colour of the seams, the margin line and the focus.
 * @cssprop [--quilt-space=0.5rem] - Space inside and between rows.
 * @cssprop [--quilt-rule=1px solid] - Line between rows, as a border is written.
 * @cssprop [--quilt-edge=3px double] - Line before the values and under the answer, as a border is written.
 * @cssprop [--quilt-cloth] - Colour that cloth is drawn in, as a wash. Default: the accent.
 */
export declare abstract class QuiltSheet<R extends Answer = Answer> extends FormField {
    #private;
    static styles: import("lit").CSSResult[];
    static properties: PropertyDeclarations;
    /** What bare numbers are in and answers are shown in: `in` or `cm`. Default `in`. */
    units: 'in' | 'cm' | undefined;
    /** What the reader sees lengths in, `in` or `cm`, where she switched. Default: `units`. */
    shown: Units | undefined;
    /** Inputs the reader may not change: attribute names with spaces between. Default none. */
    lock: string | undefined;
    /** The letter of the fabric this part is cut from. Default none. */
    fabric: string | undefined;
    /**
     * The shop's stock: a length (`6 yd`, `5 m`), or a number in the unit of the amount to buy: yards, metres, packages, fat
     * quarters. An amount above it is shown with a sentence, and is not valid in a form. Default none.
     */
    max: string | number | undefined;
    /** Values typed over reckoned rows, by the row's id. Default none. */
    measured: Record<string, string> | undefined;
    /** What the worksheet around it gives; an own attribute wins. Set by the worksheet. */
    flow: Flow | undefined;
    /** Finished width. A length as people write it, or a number of inches. */
    width: string | number | undefined;
    /** Finished length. A length as people write it, or a number of inches. */
    length: string | number | undefined;
    /** Usable width of the cloth, selvages off. Default `40 in`. */
    fabricWidth: string | number | undefined;
    /** Seam allowance. The default is the calculator's. */
    seam: string | number | undefined;
    /** How much the material shrinks in the wash, in percent. Default 0. */
    shrinkage: string | number | undefined;
    /** The step the shop cuts in: `1/8 yd`, `1/4 yd`, `thirds`, `10 cm`. Default `1/8 yd`, or `10 cm` in metric. */
    increment: string | undefined;
    /** Price of one yard or metre. Default none. */
    price: string | number | undefined;
    /** Currency, ISO 4217: `EUR`. Default none: prices are bare numbers. */
    currency: string | undefined;
    /** What is reckoned and drawn here. */
    abstract readonly calculator: Calculator<R>;
    /** The reckoned result: plain JSON, lengths as exact inches. With `errors` and no `buy` where an input is wrong. */
    get result(): R | Refused;
    /** Reckons again though no input changed: what it depends on did. */
    protected reckonAgain(): void;
    /** What a form sends: the amount to buy as a decimal number in the shop's unit; empty where an input is wrong. */
    get value(): string;
    /** Goes to the first cell that can be changed. */
    focus(options?: FocusOptions): void;
    /** How lengths are shown here. */
    get lengthStyle(): Style;
    /** The inputs as the calculator takes them. */
    protected reckonInput(): Input;
    protected createRenderRoot(): HTMLElement | DocumentFragment;
    disconnectedCallback(): void;
    /** Moving to another document takes a shadow root's styles away. */
    adoptedCallback(): void;
    protected written(property: string): unknown;
    protected startAgain(): void;
    protected fault(): Fault | undefined;
    protected faulty(): HTMLElement | undefined;
    protected updated(): void;
    /** Whether the reader may switch units: not where an amount or a price goes by the unit it is sold in. */
    protected get switchable(): boolean;
    protected render(): TemplateResult;
    /** What an element shows besides, under its lists. */
    protected more(_good: R): unknown;
    protected tell(type: string): void;
    /** What is copied and downloaded. */
    protected cells(good: R): Cells;
    /** What is printed in place of the sheet. */
    protected paper?(good: R): TemplateResult;
}
