/**
 * What is added to a patch's finished size before it is cut, in inches, with a seam allowance of 1/4 in: "Cutting half-
 * and quarter-square triangles", All People Quilt; "How to measure and cut triangles", Granny Maud's Girl, 11 June 2018.
 */
export declare const PATCHES: {
    readonly rectangle: {
        readonly added: "1/2";
        readonly each: 1;
        readonly words: "";
    };
    readonly half: {
        readonly added: "7/8";
        readonly each: 2;
        readonly words: "cut once on the diagonal";
    };
    readonly quarter: {
        readonly added: "1 1/4";
        readonly each: 4;
        readonly words: "cut twice on the diagonal";
    };
};
/** A usual ruler and cutting mat. Common practice, no source. */
export declare const RULER = "24 in";
export declare const MAT = "24 x 36";
