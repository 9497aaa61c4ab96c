/** A mattress, in inches. */
export interface Mattress {
  name: string;
  width: string;
  length: string;
}

/**
 * Crib: 16 CFR Part 1219 (full-size baby cribs), interior 28 × 52 3/8 in. The others: "Mattresses", sizes.com.
 */
export const BED_SIZES = {
  crib: { name: 'crib', width: '28', length: '52 3/8' },
  twin: { name: 'twin', width: '39', length: '75' },
  'twin-long': { name: 'twin long', width: '39', length: '80' },
  full: { name: 'full', width: '54', length: '75' },
  queen: { name: 'queen', width: '60', length: '80' },
  king: { name: 'king', width: '78', length: '80' },
  'california-king': { name: 'California king', width: '72', length: '84' },
} as const satisfies Record<string, Mattress>;

export type Bed = keyof typeof BED_SIZES;

export const BEDS = Object.keys(BED_SIZES) as Bed[];

export const MATTRESSES: Record<string, Mattress> = BED_SIZES;
