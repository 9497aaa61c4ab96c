import type { Field } from '../ledger/field.js';
import type { Teller } from '../words/teller.js';
/**
 * What can be chosen in an input's cell, in words, and what stands there already, which is none of these where it was written in
 * an attribute; undefined where it is no choice.
 */
export declare const choicesOf: (field: Field | undefined, key: string, text: string, { words, style }: Teller) => Record<string, string> | undefined;
