import { type Picture } from '../../ledger/picture.js';
import { type LaidPlan } from '../../ledger/strips.js';
import { type FabricPlan, type Sheet } from './plan-shape.js';
import type { CuttingAnswer } from './shape.js';
/** The cloth of each fabric to scale, with its pieces. Equal sheets are drawn once, with their number. */
export declare const draw: ({ fabrics }: CuttingAnswer, letters?: string[]) => Picture[];
/** A plan of one fabric. */
type DrawnPlan = LaidPlan & Pick<FabricPlan, 'fabric' | 'buy' | 'sheets'> & {
    used?: {
        sheet: Sheet | undefined;
        /** The sheets have numbers, by which lists name them. */
        isNumbered?: boolean;
    };
};
/** The same for plans that do not come from a cut list. `letter` is the fabric of a plan that names none. */
export declare const drawPlans: (plans: DrawnPlan[], letter?: string) => Picture[];
export {};
