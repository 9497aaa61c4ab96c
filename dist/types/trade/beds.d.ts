/** A mattress, in inches. */
export interface Mattress {
    name: string;
    width: string;
    length: string;
}
/**
 * Crib: 16 CFR Part 1219 (full-size baby cribs), interior 28 × 52 3/8 in. The others: "Mattresses", sizes.com.
 */
export declare const MATTRESSES: Record<string, Mattress>;
