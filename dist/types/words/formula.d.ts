import type { Quantity } from '../ledger/quantity.js';
/** How numbers are written, and what is said of rounding. */
interface Numerals {
    n(value: Quantity): string;
    rounded(how: 'up' | 'mark', formula: string, step: Quantity): string;
}
/** A formula with its numbers filled in: `58 + 2 × 4`. */
export declare const formulaOf: (quantity: Quantity, t: Numerals) => string;
export {};
