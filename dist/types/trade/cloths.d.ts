/** Cloth as shops sell it in a fixed size, usable once its selvage is off. */
export interface Sheet {
    name: string;
    width: string;
    height: string;
}
/**
 * Squares and strips as named; common practice, no source. A fat quarter is nominally 18 × 22 in: "Number of squares from a
 * fat quarter", Pieceful Living, 13 August 2011.
 */
export declare const SHEETS: Record<string, Sheet>;
