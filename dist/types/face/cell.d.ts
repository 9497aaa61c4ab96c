import { type TemplateResult } from 'lit';
import type { Field } from '../ledger/field.js';
import type { Teller } from '../words/teller.js';
/** An input that has more than one cell, and shows them itself. Undefined if it cannot. */
interface ShownField extends Field {
    show?(state: CellState): TemplateResult | undefined;
}
/** What a cell needs to show itself. */
export interface CellState {
    id: string;
    /** Missing for a reckoned row, which the reader may type over. */
    field?: ShownField | undefined;
    /** The text in the cell: the reader's own while she types or if it is wrong. */
    text: string;
    /** What it is called. */
    label: string;
    /** What can be chosen there, in words; undefined where it is written. */
    choices: Record<string, string> | undefined;
    /** Whether the reader writes it herself, where she could choose. */
    isOwn: boolean;
    wrong: boolean;
    t: Teller;
}
/**
 * A cell to type in, a choice, or a box to tick. The option says whether it is chosen, not the list: a row may become another row,
 * and the list would not have the new choice yet. The attribute says it too, for printed copies. The text is also the default of
 * the cell, because WebKit goes back to the default after “back”.
 */
export declare const cell: (state: CellState) => TemplateResult;
/** A button. `open` says whether the part that it unfolds is open. */
export declare const action: (words: string, act: () => unknown, { off, open }?: {
    off?: boolean;
    open?: boolean;
}) => TemplateResult;
/** Keys that a phone's keyboard lacks. They type into the cell beside them. */
export declare const fractionKeys: (type: (text: string) => void, name: string) => TemplateResult;
export {};
