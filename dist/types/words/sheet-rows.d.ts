import { type Fields } from '../ledger/field.js';
import type { Row } from '../ledger/row.js';
import type { Exact } from '../measure/exact.js';
import { Formulas, type Places } from './sheet-formula.js';
import { type Teller } from './teller.js';
/** A cell: words, a number, or a formula with its value now. */
export type SheetCell = string | undefined | {
    value: number | string;
    formula?: string | undefined;
    format?: string | undefined;
};
/** A row of the sheet: a row of the reckoning, or one entry of it. */
export interface SheetRow {
    id: string;
    entry: number;
    label: string;
    /** Whether it is an input. */
    isGiven: boolean;
    /** Inches in one unit of what is bought. */
    per?: Exact | undefined;
    /** Written at the end, when the place of every row is known. */
    cells: () => SheetCell[];
}
/** A length as a number in the reader's units. */
export declare const lengthIn: (length: Exact, { style }: Teller) => number;
/** Puts the rows of a reckoning into cells. */
export declare class SheetRows {
    #private;
    readonly t: Teller;
    readonly formulas: Formulas;
    constructor(t: Teller, places: Places);
    of(row: Row, fields: Fields): SheetRow[];
}
