/**
 * The trade's defaults, written as an author would write them. Shops and teachers differ, so each is only a start: the page's
 * author and the reader can change every one. Those in inches say where they come from. Those in centimetres are round sizes
 * that teachers and shops use; all of them are from memory.
 */
/** Cloth added on each side of the quilt for a backing or batting. Longarm quilters ask for 4 in: Quilts of Valor
 * Foundation, FAQ "Backing & binding", 13 July 2020. */
export declare const OVERAGE: {
    readonly in: "4 in";
    readonly cm: "10 cm";
};
/** Quilting cotton with its selvages off; where it is sold by the metre it is 110 cm wide with them. Common practice, no source. */
export declare const COTTON_WIDTH: {
    readonly in: "40 in";
    readonly cm: "105 cm";
};
/** Seam allowance in the top and the borders. Common practice, no source. With 0.75 cm every piece is cut 1.5 cm larger. */
export declare const SEAM: {
    readonly in: "1/4 in";
    readonly cm: "0.75 cm";
};
/** Seam allowance where panels of a backing are joined. Common practice, no source. */
export declare const BACKING_SEAM: {
    readonly in: "1/2 in";
    readonly cm: "1.5 cm";
};
/** Shops cut to this step. Common practice, no source. */
export declare const STEP: {
    readonly in: "1/8 yd";
    readonly cm: "10 cm";
};
/** The steps that a reader chooses from, those in her own units first. Common practice, no source. */
export declare const STEPS: {
    readonly in: readonly ["1/8 yd", "1/4 yd", "thirds", "1/2 yd", "1 yd", "10 cm", "25 cm", "50 cm"];
    readonly cm: readonly ["10 cm", "25 cm", "50 cm", "1 m", "1/8 yd", "1/4 yd", "thirds", "1/2 yd"];
};
/** Extra length of a binding for its mitred corners and its closing tails. Common practice, no source. */
export declare const BINDING_ALLOWANCE: {
    readonly in: "10 in";
    readonly cm: "25 cm";
};
/** Double-fold binding is usually cut this wide. Common practice, no source. */
export declare const BINDING_STRIP: {
    readonly in: "2 1/2 in";
    readonly cm: "6.5 cm";
};
/** How thick a quilt is, for a binding that goes round its edge. Common practice, no source. */
export declare const QUILT_THICKNESS: {
    readonly in: "1/8 in";
    readonly cm: "3 mm";
};
/** Added to a mitred border's strip for safety. Common practice, no source; the published rule of thumb adds at
 * least 1 in ("45 degree border math", The Quilting Board). */
export declare const MITRE_SAFETY: {
    readonly in: "2 in";
    readonly cm: "5 cm";
};
/** What a ruler marks. Common practice, no source. */
export declare const RULER_MARK: {
    readonly in: "1/8 in";
    readonly cm: "1 mm";
};
/** Cloth that is smaller than this in either direction is not named among what is left over. Common practice, no source. */
export declare const LEAST_LEFTOVER: {
    readonly in: "2 1/2 in";
    readonly cm: "6 cm";
};
/** How far a quilt hangs down the sides and the foot of a bed. Common practice, no source. */
export declare const BED_DROP: {
    readonly in: "12 in";
    readonly cm: "30 cm";
};
/** Quilting cotton comes to a shop on bolts of about this much. From memory. */
export declare const BOLT: {
    readonly in: "15 yd";
    readonly cm: "13.5 m";
};
/** The strip that a hanging sleeve is made of: "2023 quilt show quilt sleeve instructions", Hill Country Quilt Guild. */
export declare const SLEEVE_STRIP: {
    readonly in: "8 1/2 in";
    readonly cm: "22 cm";
};
/** How far a hanging sleeve ends short of each side of the quilt, and each of the two turns of its hems. From memory. */
export declare const SLEEVE_SHORT: {
    readonly in: "1 in";
    readonly cm: "2.5 cm";
};
export declare const SLEEVE_HEM: {
    readonly in: "1/2 in";
    readonly cm: "1.5 cm";
};
