import { type Picture } from '../../ledger/picture.js';
import { type LaidPlan } from '../../ledger/strips.js';
import { type FabricPlan, type Sheet } from './plan-shape.js';
import type { CuttingAnswer } from './shape.js';
/** The cloth of each fabric to scale, with its pieces. Equal sheets are drawn once, with their number. */
export declare const draw: ({ fabrics, used: { sheet } }: CuttingAnswer) => Picture[];
/** A plan of one fabric. */
type DrawnPlan = LaidPlan & Pick<FabricPlan, 'fabric' | 'buy' | 'sheets'>;
/** The same for plans that do not come from a cut list. */
export declare const drawPlans: (plans: DrawnPlan[], sheet?: Sheet) => Picture[];
export {};
