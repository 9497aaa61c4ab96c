/** A cloth or precut as shops sell it, with its usable size once the selvages are off. */
export interface Cloth {
    name: string;
    /** Usable width across, selvages off. */
    width: string;
    /** Usable length along, for a piece of fixed size. */
    height?: string;
}
/** Common practice, no source; a fat quarter's nominal 18 × 22 in: "Number of squares from a fat quarter", Pieceful
 * Living, 13 August 2011. */
export declare const CLOTHS: Record<string, Cloth>;
/** Cloth sold in a fixed size. Squares and strips as named; common practice, no source. */
export declare const SHEETS: Record<string, Required<Cloth>>;
