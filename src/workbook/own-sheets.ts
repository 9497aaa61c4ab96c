import { onSheet } from '../calculators/cutting/sheets.js';
import type { Planner } from '../ledger/planning.js';
import { exact, most, ONE } from '../measure/exact.js';
import { joined } from '../planner/canonical.js';
import { canBeCut } from '../planner/check.js';
import type { AtHand } from './at-hand.js';
import { asCut, drawnOwn, stillWanted, waysFrom, type OwnPlan, type Stock } from './own-cloth.js';
import { namedPieces, namesOf, sharedPool, type PlannedPool, type Pool } from './pool.js';
import type { PlannedTogether } from './shape.js';

/** A piece that is so many times as large as a sheet gives more than one, so it is planned by itself. */
const MUCH_LARGER = exact(3, 2);

/** What is left to buy of sheets, if own cloth is used first. */
export interface SheetsToBuy {
  /** How to cut the sheets, own ones of the same size among them. */
  planned: PlannedPool;
  buy: number;
  /** How to cut the reader's other cloth. */
  own: PlannedTogether[];
}

/** The plan of what is not cut from own cloth of another size. Undefined if it cannot be planned, or not yet. */
const restOf = (pool: Pool, { alone }: PlannedPool, way: OwnPlan, plan: Planner): PlannedPool | undefined => {
  const { parts, sheet } = pool;
  const all = joined(parts.map(namedPieces));
  const wanted = stillWanted(all.wanted, way.rest);
  const pieces = all.pieces.map((piece, at) => ({ ...piece, count: way.rest[at] ?? 0 }));
  const on = onSheet(sheet);
  const planned = plan(pieces, on);
  if (typeof planned === 'number' || !planned.ok || !canBeCut(pieces, on, planned)) return undefined;
  return sharedPool(pool, alone, planned, { ...all, pieces, wanted });
};

/**
 * The sheets to buy if own cloth is used first: own sheets of the same size as they are, and other cloth for the pieces that can be
 * cut from it, if that leaves fewer sheets to buy.
 */
export const sheetsLeftToBuy = (
  pool: Pool,
  planned: PlannedPool,
  stock: Stock,
  plan: Planner,
): SheetsToBuy => {
  const { parts, sheet, oneWay } = pool;
  const kept = ONE.div(most(ONE, ...parts.map(({ washed }) => washed)));
  const isSheet = (piece: AtHand): boolean => {
    const { width, height } = asCut(piece, { oneWay, kept });
    const isLarger = width.mul(height).gte(sheet.width.mul(sheet.length).mul(MUCH_LARGER));
    return piece.kind !== 'length' && width.gte(sheet.width) && height.gte(sheet.length) && !isLarger;
  };
  const same = stock.pieces.filter(isSheet);
  const others = stock.pieces.filter((piece) => !same.includes(piece));
  const has = same.reduce((all, { count }) => all + count, 0);
  let best: SheetsToBuy & { way?: OwnPlan } = { planned, buy: Math.max(0, planned.count - has), own: [] };
  const all = joined(parts.map(namedPieces));
  if (best.buy)
    for (const way of waysFrom(all.pieces, others, { oneWay, kept }, plan)) {
      if (typeof way === 'number' || !way.used.length) continue;
      const rest = restOf(pool, planned, way, plan);
      const buy = rest && Math.max(0, rest.count - has);
      if (rest && buy !== undefined && buy < best.buy)
        best = { planned: rest, buy, own: drawnOwn(parts[0]?.fabric ?? '', way, namesOf(all)), way };
    }
  let taken = best.planned.count - best.buy;
  for (const piece of same) {
    const count = Math.min(piece.count, taken);
    stock.take(piece, count);
    taken -= count;
  }
  for (const { piece, cut } of best.way?.used ?? []) stock.take(piece, cut.plan.count);
  return best;
};
