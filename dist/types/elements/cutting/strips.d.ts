import type { Style } from '../../measure/format.js';
import type { CutStrip } from '../../reckon/strips.js';
import type { Listing } from '../../sheet/calculator.js';
/** The strips to cut of each fabric or for each part, those cut alike in one row, and what comes from each. */
export declare const stripList: (plans: {
    fabric: string;
    strips: CutStrip[];
}[], style: Style, of?: string) => Listing;
