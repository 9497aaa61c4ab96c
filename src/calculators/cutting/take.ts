import type { Take } from '../calculator.js';
import type { FabricPlan } from './plan-shape.js';

/** What a list or a block takes from one of its fabrics. */
export const takeOf = (
  { fabric, need, sheets: count = 0, width, sold, used: { cuts, cost, sheet, plan } }: FabricPlan,
  oneWay: boolean,
): Take => ({
  fabric,
  need,
  width,
  sold,
  cuts,
  pieces: cuts.map(({ piece, width, length, count }) => ({ piece, width, length, count, turn: !oneWay })),
  plan,
  ...(sheet && { sheets: { sheet, count }, cost }),
});
