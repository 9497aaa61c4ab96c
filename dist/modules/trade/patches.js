/**
 * How much larger a patch is cut than it finishes, in seam allowances: with 1/4 in that is 1/2, 7/8 and 1 1/4 in, as in
 * "Cutting half- and quarter-square triangles", All People Quilt, and "How to measure and cut triangles", Granny Maud's
 * Girl, 11 June 2018. Geometry needs 2 + √2 = 3.41… and 2 + 2 √2 = 4.83…, so no allowance comes out short.
 */
const PATCHES = {
    rectangle: { seams: 2, each: 1 },
    half: { seams: '7/2', each: 2 },
    quarter: { seams: 5, each: 4 },
};
/** A usual ruler and cutting mat. Common practice, no source. */
const RULER = { in: '24 in', cm: '60 cm' };
const MAT = { in: '24 x 36 in', cm: '60 x 90 cm' };

export { MAT, PATCHES, RULER };
