import { type Picture } from '../../ledger/picture.js';
import { type LaidPlan } from '../../ledger/strips.js';
import { type CuttingAnswer, type FabricPlan } from './shape.js';
/** Each fabric's cloth to scale with its pieces; of sheets cut alike, one with their number. */
export declare const draw: ({ fabrics, used: { sheet } }: CuttingAnswer) => Picture[];
/** A plan of one fabric. */
type DrawnPlan = LaidPlan & Pick<FabricPlan, 'fabric' | 'buy' | 'sheets'>;
/** The same for plans of cloth that may be no cut list's. */
export declare const drawPlans: (plans: DrawnPlan[], sheet?: CuttingAnswer["used"]["sheet"]) => Picture[];
export {};
