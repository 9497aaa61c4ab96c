import type { Style } from '../../measure/format.js';
import type { FabricPlan } from '../../reckon/cutting.js';
import type { Listing } from '../../sheet/calculator.js';
/** The strips to cut, and what comes from each. */
export declare const stripList: (fabrics: FabricPlan[], style: Style) => Listing;
