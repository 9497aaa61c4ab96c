import { type TemplateResult } from 'lit';
import type { Answer } from '../ledger/answer.js';
import type { Listing } from '../ledger/listing.js';
import type { Picture } from '../ledger/picture.js';
import type { Message } from '../measure/message.js';
import { type Cells } from './export.js';
import { Folding } from './folding.js';
import type { Good } from './outcome.js';
import type { Swatches } from './swatch.js';
/** What is folded away, by its caption. */
export interface Fold {
    caption: Message;
    shown: unknown[];
    /** It shows without being asked for. */
    isOpen?: boolean;
}
/**
 * The shared face of every calculator: the answer, the rows with their working, the drawing, the cut list. It reckons
 * again as the reader types. If her text is wrong, it keeps the text and marks the last good answer as out of date.
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
 * @cssprop [--quilt-rule=1px solid] - Line between rows. Write it like `border` in CSS.
 * @cssprop [--quilt-edge=3px double] - The margin line and the line under the answer. Write it like `border` in CSS.
 * @cssprop [--quilt-cloth] - Colour that cloth is drawn in, as a wash. Default: the accent.
 */
export declare abstract class Face<A extends Answer = Answer> extends Folding<A> {
    #private;
    static styles: import("lit").CSSResult[];
    constructor();
    connectedCallback(): void;
    disconnectedCallback(): void;
    /** What it is called on the page and on paper. */
    get called(): string;
    protected render(): TemplateResult;
    /** The lists under the drawing. */
    lists(answer: A): Listing[];
    /** Its drawings. */
    pictures(answer: A): Picture[];
    /** The swatches of the worksheet's fabrics, by letter. */
    get swatches(): Swatches | undefined;
    /** The letters of the fabrics that it is cut from, as its worksheet reads them, or as they are written. */
    get letters(): string[];
    /** Further content of an element, above its lists. */
    protected above(_good: Good<A>): unknown;
    /** Lists of an element's own, which need no answer. */
    protected ownFolds(): Fold[];
    /** Further content of an element, under its lists. */
    protected more(_good: Good<A>): unknown;
    /** What a calculator says in large type in place of what to buy, with its lead. */
    protected ownHeadline({ answer, t }: Good<A>): {
        lead: string;
        large: string;
    } | undefined;
    /** What the reader can do about a note, in the note itself. */
    protected under(_note: Message): unknown;
    /** What is copied and downloaded. */
    protected cells({ answer, result, t }: Good<A>): Cells;
    /** Says whether a button worked, until the next answer. */
    protected report(says: Message): void;
    /** Lists for the spreadsheet file, in place of the cut list. */
    protected sheetLists?(good: Good<A>): Cells;
    /** What is printed in place of the rows. */
    protected paper?(good: Good<A>): TemplateResult;
    /** What has to be loaded before that. */
    protected readyForPaper?(): Promise<unknown>;
}
