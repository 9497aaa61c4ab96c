/**
 * Packaged sizes. "Common quilt and batting sizes", Honey Be Good, 1 May 2012 (crib, twin, full, queen, king);
 * craft and throw are common practice. Makers differ by a few inches: "Quilting basics: standard quilt sizes",
 * Project 12 Quilts, 6 January 2012, has craft 34 × 45, full 84 × 96, king 124 × 120.
 */
export declare const PACKAGES: readonly [{
    readonly name: "craft";
    readonly width: "36";
    readonly length: "45";
}, {
    readonly name: "crib";
    readonly width: "45";
    readonly length: "60";
}, {
    readonly name: "throw";
    readonly width: "60";
    readonly length: "60";
}, {
    readonly name: "twin";
    readonly width: "72";
    readonly length: "90";
}, {
    readonly name: "full";
    readonly width: "81";
    readonly length: "96";
}, {
    readonly name: "queen";
    readonly width: "90";
    readonly length: "108";
}, {
    readonly name: "king";
    readonly width: "120";
    readonly length: "120";
}];
export type UsualPackage = (typeof PACKAGES)[number]['name'];
/** Widths batting is sold in from the roll, in inches. Common practice, no source. */
export declare const ROLLS: string[];
