/**
 * What is added to a patch's finished size before it is cut, in inches, with a seam allowance of 1/4 in: "Cutting half-
 * and quarter-square triangles", All People Quilt; "How to measure and cut triangles", Granny Maud's Girl, 11 June 2018.
 */
export const PATCHES = {
  rectangle: { added: '1/2', each: 1, words: '' },
  half: { added: '7/8', each: 2, words: 'cut once on the diagonal' },
  quarter: { added: '1 1/4', each: 4, words: 'cut twice on the diagonal' },
} as const;

/** A usual ruler and cutting mat. Common practice, no source. */
export const RULER = '24 in';
export const MAT = '24 x 36';
