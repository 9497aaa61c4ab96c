import { type TemplateResult } from 'lit';
import type { Field } from '../ledger/field.js';
import type { Teller } from '../words/teller.js';
/** What a cell needs to show itself. */
interface CellState {
    id: string;
    /** Missing for a reckoned row that may be typed over. */
    field?: Field | undefined;
    /** What stands in the cell: the reader's own text while she types or where it is wrong. */
    text: string;
    /** What it is called. */
    label: string;
    /** What can be chosen there, in words; undefined where it is written. */
    choices: Record<string, string> | undefined;
    wrong: boolean;
    t: Teller;
}
/**
 * A cell to type in, a choice, or a box to tick. What is chosen is said by the option, since a row may become another row,
 * whose choice its list does not hold yet; as an attribute too, for copies of it. What stands in a cell is its default too: WebKit goes back to that in a page that it
 * kept for the way back.
 */
export declare const cell: ({ id, field, text, label, choices, wrong, t }: CellState) => TemplateResult;
/** A button; `open` says whether what it unfolds is seen. */
export declare const action: (words: string, act: () => unknown, { off, open }?: {
    off?: boolean;
    open?: boolean;
}) => TemplateResult;
/** Keys that a phone's keyboard lacks; they type at the caret of the cell beside them. */
export declare const fractionKeys: (type: (text: string) => void, name: string) => TemplateResult;
export {};
