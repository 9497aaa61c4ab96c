import type { Cloth } from '../../ledger/cloth.js';
import { Cut, enoughFor } from '../../ledger/purchase.js';
import { count, inches, type Quantity } from '../../ledger/quantity.js';
import type { OwnCloth } from '../../ledger/widths.js';
import { most, toMark, type Exact } from '../../measure/exact.js';
import { rowOf, say, type BorderPlan, type BordersLedger, type Corners, type CutBorder } from './shape.js';
import { bestPlan, lotsOf, plansFor, type Lot, type WorkedPlan } from './strips.js';
import type { GrowingTop, Widths } from './top.js';

/** A border with its cloth. If there are several borders, its cloth has its own row. */
export interface SewnBorder {
  made: CutBorder;
  lots: Lot[];
  plan: WorkedPlan;
  /** The rows that its cloth is from. */
  from: string[];
}

/** Adds a border to the top and plans its strips. Undefined if there is nothing to add. */
export const sewBorder = (
  ledger: BordersLedger,
  top: GrowingTop,
  { number, corners, widths }: { number: number; corners: Corners; widths: Widths },
  cloth: Cloth,
  own: OwnCloth,
): SewnBorder | undefined => {
  const { grain } = ledger.values;
  const { pieces, side, end } = top.sew(number, corners, widths);
  if (!pieces.length) return undefined;
  const lots = lotsOf(pieces, ledger.inputs.mark);
  const isUsual = own.width.equals(cloth.width.value);
  const id = rowOf(number, 'Strips');
  const plans = plansFor(ledger, lots, isUsual ? cloth : { ...cloth, width: inches(own.width) }, id);
  const plan = bestPlan(plans, grain) ?? refusePlan(ledger, number, lots, own.width);

  const sizes = new Set(pieces.flatMap(({ width, length }) => [width.row, length.row]));
  const strips = say('stripCount', { strips: plan.strips, joins: plan.joins });
  ledger.row(id, strips, {
    how: plan.how,
    label: say('borderRow', { number, is: 'strips' }),
    from: [...sizes, 'grain', 'join'],
    formula: count(plan.strips),
  });

  const isEven = side.value.equals(end.value);
  const border = {
    ...shown(ledger, plan),
    finished: side.value,
    finishedEnds: isEven ? undefined : end.value,
    corners,
    cloth: own,
    pieces: pieces.map(({ width, length, ...piece }) => ({
      ...piece,
      length: length.value,
      width: width.value,
    })),
    plans: plans.map((plan) => shown(ledger, plan)),
  };
  const onMark = (size: Quantity): Exact => toMark(size.value, ledger.values.mark);
  const cuts = pieces.map(({ piece, count, width, length }) => {
    const called = say('borderPiece', { number, piece, isSquare: isEven });
    return new Cut(count, called, onMark(width), onMark(length));
  });
  return { made: { number, border, cuts, strips, how: plan.how }, lots, plan, from: [id, ...sizes] };
};

/** A plan as the result gives it. */
const shown = (
  { values: { increment } }: BordersLedger,
  { plan, strips, joins, fabric: { value: fabric } }: WorkedPlan,
): BorderPlan => ({ plan, strips, joins, fabric, buy: enoughFor(fabric, increment) });

/** Refuses cloth that cannot give a border, and says why. */
const refusePlan = (ledger: BordersLedger, number: number, lots: Lot[], cloth: Exact): never => {
  const { grain, seam } = ledger.values;
  const wide = most(...lots.map(({ width }) => width.value));
  if (grain === 'along') return ledger.refuse('grain', say('tooWideAlong', { number, wide, cloth }));
  if (cloth.lte(seam.mul(2))) return ledger.refuse('fabricWidth', say('tooShortToJoin', { cloth }));
  return ledger.refuse('join', say('joinedNoLonger', { wide, cloth }));
};
