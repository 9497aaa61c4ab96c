import { type Exact } from '../measure/exact.js';
import { type Style } from '../measure/format.js';
import type { Field } from '../ledger/field.js';
/** The text of a cell, moved by some marks of the ruler. If it is not a length, it moves by whole numbers. Undefined without a number. */
export declare const nudged: (text: string, by: number, kind: Field["kind"], style: Style, mark: Exact | undefined) => string | undefined;
