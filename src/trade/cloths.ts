import type { Units } from '../measure/units.js';

/** The name of cloth of a fixed size. Everybody knows the size of a fat quarter and a fat eighth by the name. */
export type SheetKind = 'fat-quarter' | 'fat-eighth' | 'strip' | 'square' | 'sheet';

/** Cloth that shops sell in a fixed size. The size is the usable one, without the selvage. */
export interface SheetSize {
  width: string;
  height: string;
}

/** The same, as it is sold where people measure in inches and in centimetres. */
interface Sheet {
  kind: SheetKind;
  size: Record<Units, SheetSize>;
}

/** Cloth that has one size everywhere. */
const everywhere = (width: string, height: string): Sheet['size'] => ({
  in: { width, height },
  cm: { width, height },
});

/**
 * A fat quarter with its selvage off. Common practice, no source. Half a metre halved is 50 × 55 cm, and half a yard halved about
 * 45 × 55; shops in metric countries sell both, so the centimetres hold for either. From memory.
 */
export const FAT_QUARTER = {
  in: { width: '20 in', height: '18 in' },
  cm: { width: '50 cm', height: '45 cm' },
} as const;

/** What a shop cuts from a bolt and halves across, for two fat quarters. Common practice, no source; in metric from memory. */
export const FOR_TWO_QUARTERS = { in: '18 in', cm: '50 cm' } as const;

/**
 * Squares and strips as named; common practice, no source. A fat quarter is nominally 18 × 22 in: "Number of squares from a
 * fat quarter", Pieceful Living, 13 August 2011.
 */
export const SHEETS: Record<string, Sheet> = {
  'fat-quarter': { kind: 'fat-quarter', size: FAT_QUARTER },
  'fat-eighth': {
    kind: 'fat-eighth',
    size: { in: { width: '20 in', height: '9 in' }, cm: { width: '50 cm', height: '22.5 cm' } },
  },
  'strip-2.5': { kind: 'strip', size: everywhere('40 in', '2 1/2 in') },
  'square-10': { kind: 'square', size: everywhere('10 in', '10 in') },
  'square-5': { kind: 'square', size: everywhere('5 in', '5 in') },
};

/** Their names, in the order in which a reader chooses from them. */
export const SHEET_NAMES = ['fat-quarter', 'fat-eighth', 'square-10', 'square-5', 'strip-2.5'] as const;

export type SheetName = (typeof SHEET_NAMES)[number];

/** The sheet that somebody named, in any spelling of the name: `Fat quarter`. */
export const sheetNamed = (text: string): SheetName | undefined => {
  const name = text.trim().toLowerCase().replace(/\s+/g, '-');
  return SHEET_NAMES.find((known) => known === name);
};

/**
 * Shops name cloth by its width with selvages. From, to, and the usable width, in the unit. Common practice, no source; the
 * centimetres are from memory.
 */
export const BOLT_WIDTHS = {
  in: [
    // a fat quarter or a fat eighth: half a width
    [21, 23, 20],
    [43, 46, 40],
    [53, 55, 52],
    [107, 110, 106],
  ],
  cm: [
    [53, 58, 50],
    [109, 117, 105],
    [134, 142, 130],
    [148, 152, 145],
    [272, 280, 265],
  ],
} as const;
