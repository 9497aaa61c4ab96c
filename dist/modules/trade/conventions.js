/**
 * The trade's defaults, as an author would write them. Where shops and teachers differ, each is only where a
 * calculator starts: the page's author and the reader can change every one.
 */
/** Cloth added on each side of the quilt for a backing or batting. Longarm quilters ask for 4 in: Quilts of Valor
 * Foundation, FAQ "Backing & binding", 13 July 2020. */
const OVERAGE = '4 in';
/** Quilting cotton with its selvages off. Common practice, no source. */
const COTTON_WIDTH = '40 in';
/** Seam allowance in the top and the borders. Common practice, no source. */
const SEAM = '1/4 in';
/** Seam allowance where panels of a backing are joined. Common practice, no source. */
const BACKING_SEAM = '1/2 in';
/** Shops cut to this step. Common practice, no source. */
const STEP = { in: '1/8 yd', cm: '10 cm' };
/** Added to the way round a quilt for the mitred corners and the closing tails of a binding. Common practice, no source. */
const BINDING_ALLOWANCE = '10 in';
/** Double-fold binding is usually cut this wide. Common practice, no source. */
const BINDING_STRIP = '2 1/2 in';
/** How thick a quilt is, for a binding that goes round its edge. Common practice, no source. */
const QUILT_THICKNESS = '1/8 in';
/** Added to a mitred border's strip for safety. Common practice, no source; the published rule of thumb adds at
 * least 1 in ("45 degree border math", The Quilting Board). */
const MITRE_SAFETY = '2 in';
/** The longer side of a fat quarter with its selvage off; strips are cut along it. Common practice, no source. */
const FAT_QUARTER = { width: '20 in', height: '18 in' };
/** What a ruler marks. Common practice, no source. */
const RULER_MARK = { in: '1/8 in', cm: '1 mm' };
/** How far a quilt hangs down the sides and the foot of a bed. Common practice, no source. */
const BED_DROP = '12 in';
/** Quilting cotton comes to a shop on bolts of about this much. From memory. */
const BOLT = '15 yd';
/** The strip that a hanging sleeve is made of: "2023 quilt show quilt sleeve instructions", Hill Country Quilt Guild. */
const SLEEVE_STRIP = '8 1/2 in';
/** How far a hanging sleeve ends short of each side of the quilt, and each of the two turns of its hems. From memory. */
const SLEEVE_SHORT = '1 in';
const SLEEVE_HEM = '1/2 in';

export { BACKING_SEAM, BED_DROP, BINDING_ALLOWANCE, BINDING_STRIP, BOLT, COTTON_WIDTH, FAT_QUARTER, MITRE_SAFETY, OVERAGE, QUILT_THICKNESS, RULER_MARK, SEAM, SLEEVE_HEM, SLEEVE_SHORT, SLEEVE_STRIP, STEP };
