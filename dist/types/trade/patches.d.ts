/**
 * How much larger a patch is cut than it finishes, in seam allowances: with 1/4 in that is 1/2, 7/8 and 1 1/4 in, as in
 * "Cutting half- and quarter-square triangles", All People Quilt, and "How to measure and cut triangles", Granny Maud's
 * Girl, 11 June 2018. Geometry needs 2 + √2 = 3.41… and 2 + 2 √2 = 4.83…, so no allowance comes out short.
 */
export declare const PATCHES: {
    readonly rectangle: {
        readonly seams: 2;
        readonly each: 1;
    };
    readonly half: {
        readonly seams: "7/2";
        readonly each: 2;
    };
    readonly quarter: {
        readonly seams: 5;
        readonly each: 4;
    };
};
/** A usual ruler and cutting mat. Common practice, no source. */
export declare const RULER: {
    readonly in: "24 in";
    readonly cm: "60 cm";
};
export declare const MAT: {
    readonly in: "24 x 36 in";
    readonly cm: "60 x 90 cm";
};
