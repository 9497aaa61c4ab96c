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
declare const INCHES: readonly [{
    readonly name: "craft";
    readonly width: "36 in";
    readonly length: "45 in";
}, {
    readonly name: "crib";
    readonly width: "45 in";
    readonly length: "60 in";
}, {
    readonly name: "throw";
    readonly width: "60 in";
    readonly length: "60 in";
}, {
    readonly name: "twin";
    readonly width: "72 in";
    readonly length: "90 in";
}, {
    readonly name: "full";
    readonly width: "81 in";
    readonly length: "96 in";
}, {
    readonly name: "queen";
    readonly width: "90 in";
    readonly length: "108 in";
}, {
    readonly name: "king";
    readonly width: "120 in";
    readonly length: "120 in";
}];
export type UsualPackage = (typeof INCHES)[number]['name'];
export declare const PACKAGES: Record<Units, readonly BattingPackage[]>;
/** Widths batting is sold in from the roll. In inches: common practice, no source. In centimetres: from memory. */
export declare const ROLLS: {
    readonly in: readonly ["45 in", "60 in", "90 in", "96 in", "108 in", "120 in"];
    readonly cm: readonly ["150 cm", "220 cm", "240 cm", "280 cm", "300 cm"];
};
export {};
