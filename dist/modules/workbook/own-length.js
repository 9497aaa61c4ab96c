import { laidOut } from '../ledger/strips.js';
import { ONE, most, least, sum } from '../measure/exact.js';
import { toStep } from '../measure/shop.js';
import { joined } from '../planner/canonical.js';
import { canBeCut } from '../planner/check.js';
import { waysFrom, drawnOwn, stillWanted } from './own-cloth.js';
import { namesOf, namedPieces } from './pool.js';
import { lengthsOf, alone } from './together.js';

const boughtFor = (lengths, step) => sum(lengths.map(({ need }) => toStep(need, step)));
/** The pieces of a part. One that has to be cut on its own is one piece, as wide as its cloth. */
const wholeOrPieces = (part) => part.pieces.length || part.width.lte(0)
    ? namedPieces(part)
    : [{ width: part.width, height: part.need.div(part.washed), count: 1, turn: false, name: part.title }];
/** What is left to buy if this is cut from own cloth. Undefined if the rest cannot be planned, or not yet. */
const restOf = (ledger, parts, ownPlan, plan) => {
    const all = joined(parts.map(wholeOrPieces));
    const wanted = stillWanted(all.wanted, ownPlan.rest);
    const isLeft = (_, at) => !!wanted[at]?.some((count) => count > 0);
    const isWhole = ({ pieces, width }) => !pieces.length && width.lte(0);
    const others = parts.filter((part, at) => isWhole(part) || (!part.pieces.length && isLeft(part, at)));
    const cut = parts.filter((part, at) => part.pieces.length && isLeft(part, at));
    if (!cut.length)
        return { lengths: lengthsOf(ledger, others.map(alone)), laid: undefined };
    const pieces = all.pieces.map((piece, at) => ({
        ...piece,
        count: parts.reduce((sum, part, of) => sum + (part.pieces.length ? (wanted[of]?.[at] ?? 0) : 0), 0),
    }));
    const on = { width: least(...cut.map(({ width }) => width)) };
    const layout = plan(pieces, on);
    if (typeof layout === 'number' || !layout.ok || !canBeCut(pieces, on, layout))
        return undefined;
    const need = layout.length.mul(most(ONE, ...cut.map(({ washed }) => washed)));
    const lengths = lengthsOf(ledger, [{ parts: cut, need, laid: { plan: layout, on } }, ...others.map(alone)]);
    return { lengths, laid: laidOut(layout, on, namesOf(all)) };
};
/**
 * What is left to buy for the parts of one cloth if a reader's own cloth is cut first. Undefined if that buys no less than without
 * it.
 */
const leftToBuy = (ledger, parts, without, stock, plan) => {
    const step = ledger.values.increment;
    const all = joined(parts.map(wholeOrPieces));
    const oneWay = parts.some(({ pieces }) => pieces.some(({ turn }) => !turn));
    const kept = ONE.div(most(ONE, ...parts.map(({ washed }) => washed)));
    let best;
    for (const way of waysFrom(all.pieces, stock.pieces, { oneWay, kept }, plan)) {
        if (typeof way === 'number' || !way.used.length)
            continue;
        const left = restOf(ledger, parts, way, plan);
        if (left && boughtFor(left.lengths, step).lt(boughtFor(best?.left.lengths ?? without, step)))
            best = { left, way };
    }
    if (!best)
        return undefined;
    for (const { piece, cut } of best.way.used)
        stock.take(piece, cut.plan.count);
    return { ...best.left, own: drawnOwn(parts[0]?.fabric ?? '', best.way, namesOf(all)) };
};

export { leftToBuy };
