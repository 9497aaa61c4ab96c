import { Cut, enoughFor } from '../../ledger/purchase.js';
import { inches, count } from '../../ledger/quantity.js';
import { most, toMark } from '../../measure/exact.js';
import { say, rowOf } from './shape.js';
import { lotsOf, plansFor, bestPlan } from './strips.js';

/** Adds a border to the top and plans its strips. Undefined if there is nothing to add. */
const sewBorder = (ledger, top, { number, corners, widths }, cloth, own) => {
    const { grain } = ledger.values;
    const { pieces, side, end } = top.sew(number, corners, widths);
    if (!pieces.length)
        return undefined;
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
    const onMark = (size) => toMark(size.value, ledger.values.mark);
    const cuts = pieces.map(({ piece, count, width, length }) => {
        const called = say('borderPiece', { number, piece, isSquare: isEven });
        return new Cut(count, called, onMark(width), onMark(length));
    });
    return { made: { number, border, cuts, strips, how: plan.how }, lots, plan, from: [id, ...sizes] };
};
/** A plan as the result gives it. */
const shown = ({ values: { increment } }, { plan, strips, joins, fabric: { value: fabric } }) => ({ plan, strips, joins, fabric, buy: enoughFor(fabric, increment) });
/** Refuses cloth that cannot give a border, and says why. */
const refusePlan = (ledger, number, lots, cloth) => {
    const { grain, seam } = ledger.values;
    const wide = most(...lots.map(({ width }) => width.value));
    if (grain === 'along')
        return ledger.refuse('grain', say('tooWideAlong', { number, wide, cloth }));
    if (cloth.lte(seam.mul(2)))
        return ledger.refuse('fabricWidth', say('tooShortToJoin', { cloth }));
    return ledger.refuse('join', say('joinedNoLonger', { wide, cloth }));
};

export { sewBorder };
