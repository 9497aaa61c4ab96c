import type { Units } from '../measure/units.js';

/** A packaged batting, as its label names it. */
interface BattingPackage {
  name: UsualPackage;
  width: string;
  length: string;
}

/**
 * Packaged sizes. "Common quilt and batting sizes", Honey Be Good, 1 May 2012 (crib, twin, full, queen, king);
 * craft and throw are common practice. Makers differ by a few inches: "Quilting basics: standard quilt sizes",
 * Project 12 Quilts, 6 January 2012, has craft 34 × 45, full 84 × 96, king 124 × 120.
 */
const INCHES = [
  { name: 'craft', width: '36 in', length: '45 in' },
  { name: 'crib', width: '45 in', length: '60 in' },
  { name: 'throw', width: '60 in', length: '60 in' },
  { name: 'twin', width: '72 in', length: '90 in' },
  { name: 'full', width: '81 in', length: '96 in' },
  { name: 'queen', width: '90 in', length: '108 in' },
  { name: 'king', width: '120 in', length: '120 in' },
] as const;

export type UsualPackage = (typeof INCHES)[number]['name'];

/**
 * The same where labels are in centimetres, rounded down to whole 5 cm, so that none is taken for larger than it is. From memory.
 */
const CENTIMETRES: readonly BattingPackage[] = [
  { name: 'craft', width: '90 cm', length: '110 cm' },
  { name: 'crib', width: '110 cm', length: '150 cm' },
  { name: 'throw', width: '150 cm', length: '150 cm' },
  { name: 'twin', width: '180 cm', length: '225 cm' },
  { name: 'full', width: '205 cm', length: '240 cm' },
  { name: 'queen', width: '225 cm', length: '270 cm' },
  { name: 'king', width: '300 cm', length: '300 cm' },
];

export const PACKAGES: Record<Units, readonly BattingPackage[]> = { in: INCHES, cm: CENTIMETRES };

/** Widths batting is sold in from the roll. In inches: common practice, no source. In centimetres: from memory. */
export const ROLLS = {
  in: ['45 in', '60 in', '90 in', '96 in', '108 in', '120 in'],
  cm: ['150 cm', '220 cm', '240 cm', '280 cm', '300 cm'],
} as const;
