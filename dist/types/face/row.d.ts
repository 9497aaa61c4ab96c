import { type TemplateResult } from 'lit';
import type { Field } from '../ledger/field.js';
import type { Teller } from '../words/teller.js';
import type { WorkingRow } from '../words/told.js';
/** A row as it is shown, and what can be done in it. */
export interface ShownRow extends Pick<WorkingRow, 'id' | 'label' | 'role'> {
    field: Field | undefined;
    /** What stands in its cell. */
    text: string;
    /** What can be chosen there, in words; undefined where it is written. */
    choices: Record<string, string> | undefined;
    how: string;
    /** What is wrong there, in a sentence. */
    message: string | undefined;
    /** Whether the reader may change it. */
    isOpen: boolean;
    isMarked: boolean;
    isEdited: boolean;
    isWrong: boolean;
    /** An entry of a list that is still to be written. */
    isNext: boolean;
    /** What her own value stands in place of; undefined where there is none of her own. */
    instead: string | undefined;
    /** A part of what stands there can be taken away; what it is called. */
    takeAway: string | undefined;
    off: boolean;
    t: Teller;
    putBack: () => void;
    take: () => void;
    typeIn: (sign: string) => void;
}
/** A row of three columns: what it is, its value, how it was got. */
export declare const row: (shown: ShownRow) => TemplateResult;
