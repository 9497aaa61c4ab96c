import { type Exact } from '../measure/exact.js';
import { type Style } from '../measure/format.js';
import type { Field } from '../ledger/field.js';
/** What a cell says so many ruler marks on, or wholes where it holds no length; nothing where it holds no number. */
export declare const nudged: (text: string, by: number, kind: Field["kind"], style: Style, mark: Exact | undefined) => string | undefined;
