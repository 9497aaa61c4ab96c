/** A packaged batting, as its label names it. Sides in inches, as people write them. */
interface BattingPackage {
  name: string;
  width: string;
  length: string;
  /** Price of one, in the page's currency, where the shop's own list gives it. */
  price?: string;
}

/**
 * Packaged sizes. "Common quilt and batting sizes", Honey Be Good, 1 May 2012 (crib, twin, full, queen, king);
 * craft and throw are common practice. Makers differ by a few inches: "Quilting basics: standard quilt sizes",
 * Project 12 Quilts, 6 January 2012, has craft 34 × 45, full 84 × 96, king 124 × 120.
 */
export const PACKAGES = [
  { name: 'craft', width: '36', length: '45' },
  { name: 'crib', width: '45', length: '60' },
  { name: 'throw', width: '60', length: '60' },
  { name: 'twin', width: '72', length: '90' },
  { name: 'full', width: '81', length: '96' },
  { name: 'queen', width: '90', length: '108' },
  { name: 'king', width: '120', length: '120' },
] as const satisfies readonly BattingPackage[];

export type UsualPackage = (typeof PACKAGES)[number]['name'];

/** Widths batting is sold in from the roll, in inches. Common practice, no source. */
export const ROLLS = ['45', '60', '90', '96', '108', '120'];
