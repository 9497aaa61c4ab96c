import type { Quantity } from '../ledger/quantity.js';
/** The operations that round. */
export type Rounding = 'up' | 'step' | 'mark' | 'coin';
/** How to write numbers and rounding. */
export interface Numerals {
    n(value: Quantity): string;
    rounded(how: Rounding, formula: string, step: Quantity): string;
}
/** A formula with its numbers filled in: `58 + 2 × 4`. */
export declare const formulaOf: (quantity: Quantity, t: Numerals) => string;
