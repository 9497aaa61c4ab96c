/** What cloth of a fixed size is called; a fat quarter and a fat eighth say their size by that. */
export type SheetKind = 'fat-quarter' | 'fat-eighth' | 'strip' | 'square' | 'sheet';
/** Cloth as shops sell it in a fixed size, usable once its selvage is off. */
export interface Sheet {
    kind: SheetKind;
    width: string;
    height: string;
}
/**
 * Squares and strips as named; common practice, no source. A fat quarter is nominally 18 × 22 in: "Number of squares from a
 * fat quarter", Pieceful Living, 13 August 2011.
 */
export declare const SHEETS: Record<string, Sheet>;
/** Cloth is named by its width with its selvages: from, to, and what of it is usable, in inches. Common practice, no source. */
export declare const BOLT_WIDTHS: readonly [readonly [21, 23, 20], readonly [43, 46, 40], readonly [53, 55, 52], readonly [107, 110, 106]];
