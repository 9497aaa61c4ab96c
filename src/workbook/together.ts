import type { Planner } from '../ledger/planning.js';
import { laidOut, type LaidPlan } from '../ledger/strips.js';
import { least, most, ONE, sum, type Exact } from '../measure/exact.js';
import { inLengths, toStep } from '../measure/shop.js';
import { inSizeOrder } from '../planner/canonical.js';
import { canBeCut } from '../planner/check.js';
import type { Cloth, CuttingPlan } from '../planner/plan.js';
import type { WorkbookPart } from './input.js';
import { namedPieces } from './pool.js';
import type { WorksheetLedger } from './shape.js';

/** Cloth of some parts in one piece, and how long that is before rounding. */
export interface Stretch {
  parts: WorkbookPart[];
  need: Exact;
  /** How they are laid out together. Otherwise it is one part, which says itself how to cut it. */
  laid?: { plan: CuttingPlan; on: Cloth };
}

/** One length of cloth: stretches of it, one after the other. */
export interface Length extends Stretch {
  stretches: Stretch[];
}

/** The part of a ledger that this needs. */
type Stepped = Pick<WorksheetLedger, 'values'>;

const needOf = (lengths: Stretch[]): Exact => sum(lengths.map(({ need }) => need));
export const alone = (part: WorkbookPart): Stretch => ({ parts: [part], need: part.need });

/** The lengths to buy for stretches of cloth, each of which needs to be in one length. */
export const lengthsOf = ({ values: { increment } }: Stepped, stretches: Stretch[]): Length[] =>
  inLengths(
    stretches.map(({ need }) => need),
    increment,
  ).map((places) => {
    const of = stretches.filter((_, at) => places.includes(at));
    return { parts: of.flatMap(({ parts }) => parts), need: needOf(of), stretches: of };
  });

/** How parts of one cloth are cut. */
export interface Together {
  lengths: Length[];
  laid?: LaidPlan;
  /** A plan that may save cloth is not ready yet. */
  isPlanning?: boolean;
}

/**
 * The lengths to buy for several parts of one cloth. Parts are planned together if that takes less than one after the other. A
 * part that is cut as its own plan says still takes no more than its pieces need.
 */
export const planTogether = (ledger: Stepped, parts: WorkbookPart[], plan: Planner): Together => {
  const apart = lengthsOf(ledger, parts.map(alone));
  const cut = parts.filter(({ pieces }) => pieces.length);
  if (parts.length < 2 || !cut.length) return { lengths: apart };
  const pieces = inSizeOrder(cut.flatMap(namedPieces));
  const width = { width: least(...cut.map(({ width }) => width)) };
  const layout = plan(pieces, width);
  if (typeof layout === 'number') return { lengths: apart, isPlanning: true };
  if (!layout.ok || !canBeCut(pieces, width, layout)) return { lengths: apart };

  const need = layout.length.mul(most(ONE, ...cut.map(({ washed }) => washed)));
  const others = parts.filter(({ pieces }) => !pieces.length);
  const lengths = lengthsOf(ledger, [
    { parts: cut, need, laid: { plan: layout, on: width } },
    ...others.map(alone),
  ]);
  const bought = (lengths: Length[]): Exact =>
    sum(lengths.map(({ need }) => toStep(need, ledger.values.increment)));
  const less = bought(apart).compare(bought(lengths)) || needOf(apart).compare(needOf(lengths));
  if (less <= 0) return { lengths: apart };
  return {
    lengths,
    laid: laidOut(
      layout,
      width,
      pieces.map(({ name }) => name),
    ),
  };
};
