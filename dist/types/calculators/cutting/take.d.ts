import type { Take } from '../calculator.js';
import type { FabricPlan } from './plan-shape.js';
/** What a list or a block takes from one of its fabrics. */
export declare const takeOf: ({ fabric, need, sheets: count, width, sold, used: { cuts, cost, sheet, plan } }: FabricPlan, oneWay: boolean) => Take;
