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
export const SHEETS: Record<string, Sheet> = {
  'fat-quarter': { kind: 'fat-quarter', width: '20 in', height: '18 in' },
  'fat-eighth': { kind: 'fat-eighth', width: '20 in', height: '9 in' },
  'strip-2.5': { kind: 'strip', width: '40 in', height: '2 1/2 in' },
  'square-10': { kind: 'square', width: '10 in', height: '10 in' },
  'square-5': { kind: 'square', width: '5 in', height: '5 in' },
};

/** Cloth is named by its width with its selvages: from, to, and what of it is usable, in inches. Common practice, no source. */
export const BOLT_WIDTHS = [
  // a fat quarter or a fat eighth: half a width
  [21, 23, 20],
  [43, 46, 40],
  [53, 55, 52],
  [107, 110, 106],
] as const;
