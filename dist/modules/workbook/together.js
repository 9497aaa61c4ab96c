import { laidOut } from '../ledger/strips.js';
import { least, most, ONE, sum } from '../measure/exact.js';
import { inLengths, toStep } from '../measure/shop.js';
import { inSizeOrder } from '../planner/canonical.js';
import { canBeCut } from '../planner/check.js';
import { namedPieces } from './pool.js';

const needOf = (lengths) => sum(lengths.map(({ need }) => need));
const alone = (part) => ({ parts: [part], need: part.need });
/** The lengths to buy for stretches of cloth, each of which needs to be in one length. */
const lengthsOf = ({ values: { increment } }, stretches) => inLengths(stretches.map(({ need }) => need), increment).map((places) => {
    const of = stretches.filter((_, at) => places.includes(at));
    return { parts: of.flatMap(({ parts }) => parts), need: needOf(of), stretches: of };
});
/**
 * The lengths to buy for several parts of one cloth. Parts are planned together if that takes less than one after the other. A
 * part that is cut as its own plan says still takes no more than its pieces need.
 */
const planTogether = (ledger, parts, plan) => {
    const apart = lengthsOf(ledger, parts.map(alone));
    const cut = parts.filter(({ pieces }) => pieces.length);
    if (parts.length < 2 || !cut.length)
        return { lengths: apart };
    const pieces = inSizeOrder(cut.flatMap(namedPieces));
    const width = { width: least(...cut.map(({ width }) => width)) };
    const layout = plan(pieces, width);
    if (typeof layout === 'number')
        return { lengths: apart, isPlanning: true };
    if (!layout.ok || !canBeCut(pieces, width, layout))
        return { lengths: apart };
    const need = layout.length.mul(most(ONE, ...cut.map(({ washed }) => washed)));
    const others = parts.filter(({ pieces }) => !pieces.length);
    const lengths = lengthsOf(ledger, [
        { parts: cut, need, laid: { plan: layout, on: width } },
        ...others.map(alone),
    ]);
    const bought = (lengths) => sum(lengths.map(({ need }) => toStep(need, ledger.values.increment)));
    const less = bought(apart).compare(bought(lengths)) || needOf(apart).compare(needOf(lengths));
    if (less <= 0)
        return { lengths: apart };
    return {
        lengths,
        laid: laidOut(layout, width, pieces.map(({ name }) => name)),
    };
};

export { alone, lengthsOf, planTogether };
