/**
 * The trade's defaults, written as an author would write them. Shops and teachers differ, so each is only a start: the page's
 * author and the reader can change every one. Those in inches say where they come from. Those in centimetres are round sizes
 * that teachers and shops use; all of them are from memory.
 */
/** Cloth added on each side of the quilt for a backing or batting. Longarm quilters ask for 4 in: Quilts of Valor
 * Foundation, FAQ "Backing & binding", 13 July 2020. */
const OVERAGE = { in: '4 in', cm: '10 cm' };
/** Quilting cotton with its selvages off; where it is sold by the metre it is 110 cm wide with them. Common practice, no source. */
const COTTON_WIDTH = { in: '40 in', cm: '105 cm' };
/** Seam allowance in the top and the borders. Common practice, no source. With 0.75 cm every piece is cut 1.5 cm larger. */
const SEAM = { in: '1/4 in', cm: '0.75 cm' };
/** Seam allowance where panels of a backing are joined. Common practice, no source. */
const BACKING_SEAM = { in: '1/2 in', cm: '1.5 cm' };
/** Shops cut to this step. Common practice, no source. */
const STEP = { in: '1/8 yd', cm: '10 cm' };
/** The steps that a reader chooses from, those in her own units first. Common practice, no source. */
const STEPS = {
    in: ['1/8 yd', '1/4 yd', 'thirds', '1/2 yd', '1 yd', '10 cm', '25 cm', '50 cm'],
    cm: ['10 cm', '25 cm', '50 cm', '1 m', '1/8 yd', '1/4 yd', 'thirds', '1/2 yd'],
};
/** Extra length of a binding for its mitred corners and its closing tails. Common practice, no source. */
const BINDING_ALLOWANCE = { in: '10 in', cm: '25 cm' };
/** Double-fold binding is usually cut this wide. Common practice, no source. */
const BINDING_STRIP = { in: '2 1/2 in', cm: '6.5 cm' };
/** How thick a quilt is, for a binding that goes round its edge. Common practice, no source. */
const QUILT_THICKNESS = { in: '1/8 in', cm: '3 mm' };
/** Added to a mitred border's strip for safety. Common practice, no source; the published rule of thumb adds at
 * least 1 in ("45 degree border math", The Quilting Board). */
const MITRE_SAFETY = { in: '2 in', cm: '5 cm' };
/** What a ruler marks. Common practice, no source. */
const RULER_MARK = { in: '1/8 in', cm: '1 mm' };
/** Cloth that is smaller than this in either direction is not named among what is left over. Common practice, no source. */
const LEAST_LEFTOVER = { in: '2 1/2 in', cm: '6 cm' };
/** How far a quilt hangs down the sides and the foot of a bed. Common practice, no source. */
const BED_DROP = { in: '12 in', cm: '30 cm' };
/** Quilting cotton comes to a shop on bolts of about this much. From memory. */
const BOLT = { in: '15 yd', cm: '13.5 m' };
/** The strip that a hanging sleeve is made of: "2023 quilt show quilt sleeve instructions", Hill Country Quilt Guild. */
const SLEEVE_STRIP = { in: '8 1/2 in', cm: '22 cm' };
/** How far a hanging sleeve ends short of each side of the quilt, and each of the two turns of its hems. From memory. */
const SLEEVE_SHORT = { in: '1 in', cm: '2.5 cm' };
const SLEEVE_HEM = { in: '1/2 in', cm: '1.5 cm' };

export { BACKING_SEAM, BED_DROP, BINDING_ALLOWANCE, BINDING_STRIP, BOLT, COTTON_WIDTH, LEAST_LEFTOVER, MITRE_SAFETY, OVERAGE, QUILT_THICKNESS, RULER_MARK, SEAM, SLEEVE_HEM, SLEEVE_SHORT, SLEEVE_STRIP, STEP, STEPS };
