import type { Planner } from '../ledger/planning.js';
import { laidOut, type LaidPlan } from '../ledger/strips.js';
import { least, most, ONE, sum, type Exact } from '../measure/exact.js';
import type { Message } from '../measure/message.js';
import { inLengths, toStep } from '../measure/shop.js';
import { inSizeOrder } from '../planner/canonical.js';
import { canBeCut } from '../planner/check.js';
import type { WorkbookPart } from './input.js';
import { namedPieces } from './pool.js';
import { say } from './sayings.js';
import type { WorksheetLedger } from './shape.js';

/** What is cut from one length of cloth, and how long that is before rounding. */
export interface Length {
  parts: WorkbookPart[];
  need: Exact;
}

const needOf = (lengths: Length[]): Exact => sum(lengths.map(({ need }) => need));
const alone = (part: WorkbookPart): Length => ({ parts: [part], need: part.need });

/** The lengths to buy for groups of parts, each of which needs to be in one length. */
export const lengthsOf = ({ values: { increment } }: WorksheetLedger, lengths: Length[]): Length[] =>
  inLengths(
    lengths.map(({ need }) => need),
    increment,
  ).map((places) => {
    const of = lengths.filter((_, at) => places.includes(at));
    return { parts: of.flatMap(({ parts }) => parts), need: needOf(of) };
  });

/**
 * The lengths to buy for several parts of one cloth. Parts are planned together if that takes less than one after the other. A
 * part that is cut as its own plan says still takes no more than its pieces need.
 */
export const planTogether = (
  ledger: WorksheetLedger,
  parts: WorkbookPart[],
  plan: Planner,
  cloth: Message,
): { lengths: Length[]; laid?: LaidPlan } => {
  const apart = lengthsOf(ledger, parts.map(alone));
  const cut = parts.filter(({ pieces }) => pieces.length);
  if (parts.length < 2 || !cut.length) return { lengths: apart };
  const pieces = inSizeOrder(cut.flatMap(namedPieces));
  const width = { width: least(...cut.map(({ width }) => width)) };
  const layout = plan(pieces, width);
  if (typeof layout === 'number') ledger.note(say('planningTogether', { cloth }));
  if (typeof layout === 'number' || !layout.ok || !canBeCut(pieces, width, layout)) return { lengths: apart };

  const need = layout.length.mul(most(ONE, ...cut.map(({ washed }) => washed)));
  const others = parts.filter(({ pieces }) => !pieces.length);
  const lengths = lengthsOf(ledger, [{ parts: cut, need }, ...others.map(alone)]);
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
