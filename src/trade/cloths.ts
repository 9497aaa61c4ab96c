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
export const CLOTHS: Record<string, Cloth> = {
  cotton: { name: 'quilting cotton', width: '40 in' },
  decorating: { name: 'home-decorating cloth', width: '52 in' },
  wide: { name: 'extra-wide backing', width: '106 in' },
};

/** Cloth sold in a fixed size. Squares and strips as named; common practice, no source. */
export const SHEETS: Record<string, Required<Cloth>> = {
  'fat-quarter': { name: 'fat quarter', width: '20 in', height: '18 in' },
  'fat-eighth': { name: 'fat eighth', width: '20 in', height: '9 in' },
  'strip-2.5': { name: '2 1/2 in strip', width: '40 in', height: '2 1/2 in' },
  'square-10': { name: '10 in square', width: '10 in', height: '10 in' },
  'square-5': { name: '5 in square', width: '5 in', height: '5 in' },
};
