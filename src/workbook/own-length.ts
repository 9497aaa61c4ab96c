import type { Planner } from '../ledger/planning.js';
import { laidOut, type LaidPlan } from '../ledger/strips.js';
import { least, most, ONE, sum, type Exact } from '../measure/exact.js';
import { toStep, type Step } from '../measure/shop.js';
import { joined } from '../planner/canonical.js';
import { canBeCut } from '../planner/check.js';
import type { WorkbookPart } from './input.js';
import { drawnOwn, stillWanted, waysFrom, type OwnPlan, type Stock } from './own-cloth.js';
import { namedPieces, namesOf, type NamedPiece } from './pool.js';
import type { PlannedTogether, WorksheetLedger } from './shape.js';
import { alone, lengthsOf, type Length } from './together.js';

/** What is left to buy of cloth by length, if own cloth is cut first. */
export interface LeftToBuy {
  lengths: Length[];
  laid: LaidPlan | undefined;
  own: PlannedTogether[];
}

const boughtFor = (lengths: Length[], step: Step): Exact =>
  sum(lengths.map(({ need }) => toStep(need, step)));

/** The pieces of a part. One that has to be cut on its own is one piece, as wide as its cloth. */
const wholeOrPieces = (part: WorkbookPart): NamedPiece[] =>
  part.pieces.length || part.width.lte(0)
    ? namedPieces(part)
    : [{ width: part.width, height: part.need.div(part.washed), count: 1, turn: false, name: part.title }];

/** What is left to buy if this is cut from own cloth. Undefined if the rest cannot be planned, or not yet. */
const restOf = (
  ledger: WorksheetLedger,
  parts: WorkbookPart[],
  ownPlan: OwnPlan,
  plan: Planner,
): { lengths: Length[]; laid: LaidPlan | undefined } | undefined => {
  const all = joined(parts.map(wholeOrPieces));
  const wanted = stillWanted(all.wanted, ownPlan.rest);
  const isLeft = (_: WorkbookPart, at: number): boolean => !!wanted[at]?.some((count) => count > 0);
  const isWhole = ({ pieces, width }: WorkbookPart): boolean => !pieces.length && width.lte(0);
  const others = parts.filter((part, at) => isWhole(part) || (!part.pieces.length && isLeft(part, at)));
  const cut = parts.filter((part, at) => part.pieces.length && isLeft(part, at));
  if (!cut.length) return { lengths: lengthsOf(ledger, others.map(alone)), laid: undefined };
  const pieces = all.pieces.map((piece, at) => ({
    ...piece,
    count: parts.reduce((sum, part, of) => sum + (part.pieces.length ? (wanted[of]?.[at] ?? 0) : 0), 0),
  }));
  const on = { width: least(...cut.map(({ width }) => width)) };
  const layout = plan(pieces, on);
  if (typeof layout === 'number' || !layout.ok || !canBeCut(pieces, on, layout)) return undefined;
  const need = layout.length.mul(most(ONE, ...cut.map(({ washed }) => washed)));
  const lengths = lengthsOf(ledger, [{ parts: cut, need, laid: { plan: layout, on } }, ...others.map(alone)]);
  return { lengths, laid: laidOut(layout, on, namesOf(all)) };
};

/**
 * What is left to buy for the parts of one cloth if a reader's own cloth is cut first. Undefined if that buys no less than without
 * it.
 */
export const leftToBuy = (
  ledger: WorksheetLedger,
  parts: WorkbookPart[],
  without: Length[],
  stock: Stock,
  plan: Planner,
): LeftToBuy | undefined => {
  const step = ledger.values.increment;
  const all = joined(parts.map(wholeOrPieces));
  const oneWay = parts.some(({ pieces }) => pieces.some(({ turn }) => !turn));
  const kept = ONE.div(most(ONE, ...parts.map(({ washed }) => washed)));
  let best: { left: NonNullable<ReturnType<typeof restOf>>; way: OwnPlan } | undefined;
  for (const way of waysFrom(all.pieces, stock.pieces, { oneWay, kept }, plan)) {
    if (typeof way === 'number' || !way.used.length) continue;
    const left = restOf(ledger, parts, way, plan);
    if (left && boughtFor(left.lengths, step).lt(boughtFor(best?.left.lengths ?? without, step)))
      best = { left, way };
  }
  if (!best) return undefined;
  for (const { piece, cut } of best.way.used) stock.take(piece, cut.plan.count);
  return { ...best.left, own: drawnOwn(parts[0]?.fabric ?? '', best.way, namesOf(all)) };
};
