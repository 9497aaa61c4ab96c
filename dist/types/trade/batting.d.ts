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
export declare const PACKAGES: BattingPackage[];
/** Widths batting is sold in from the roll, in inches. Common practice, no source. */
export declare const ROLLS: string[];
export {};
