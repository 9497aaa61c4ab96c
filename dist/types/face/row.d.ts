import { type TemplateResult } from 'lit';
import type { Field } from '../ledger/field.js';
import type { Teller } from '../words/teller.js';
import type { WorkingRow } from '../words/told.js';
/** A row on the page, with what the reader can do in it. */
export interface ShownRow extends Pick<WorkingRow, 'id' | 'label' | 'role'> {
    field: Field | undefined;
    /** The text in its cell, and the same in words. */
    text: string;
    words: string;
    /** What can be chosen there, in words; undefined if the reader writes it. */
    choices: Record<string, string> | undefined;
    how: string;
    /** A sentence about what is wrong. */
    message: string | undefined;
    /** Whether the reader may change it. */
    isOpen: boolean;
    isMarked: boolean;
    isEdited: boolean;
    isWrong: boolean;
    /** The empty entry at the end of a list. */
    isNext: boolean;
    /** The reader writes it herself, where she could choose. */
    isOwn: boolean;
    /** Not seen on a screen until somebody asks for it. */
    isFolded: boolean;
    /** The value that her own replaces, or undefined if she gave none. */
    instead: string | undefined;
    /** The name of the entry, if she can take it away. */
    takeAway: string | undefined;
    off: boolean;
    t: Teller;
    putBack: () => void;
    take: () => void;
    typeIn: (sign: string) => void;
}
/** A row of three columns: its name, its value, how it was got. */
export declare const row: (shown: ShownRow) => TemplateResult;
