import type { Field } from '../ledger/field.js';
import type { Teller } from '../words/teller.js';
/** The choice to write something else than what is offered. No text can be the same: its spaces would be gone. */
export declare const OWN = " own ";
/**
 * What can be chosen in an input's cell, in words, and what stands there already, which is none of these where it was written in
 * an attribute; undefined where it is no choice.
 */
export declare const choicesOf: (field: Field | undefined, key: string, text: string, t: Teller) => Record<string, string> | undefined;
