import { isSameSheet, onSheet } from '../calculators/cutting/sheets.js';
import { sayOfPlan } from '../ledger/planning.js';
import { refuse } from '../ledger/refusal.js';
import { sayOfShop } from '../ledger/shop.js';
import { laidOut } from '../ledger/strips.js';
import { Cut } from '../ledger/purchase.js';
import { joined } from '../planner/canonical.js';
import { canBeCut } from '../planner/check.js';
import { shareOut } from '../planner/share-out.js';
import { isSame } from './flow.js';
import { say } from './sayings.js';

/** In the order of the weeks. What has none comes last. */
const byWeek = ({ week: a }, { week: b }) => (a === b ? 0 : (a ?? Infinity) - (b ?? Infinity));
const isOneWay = ({ pieces }) => pieces.some(({ turn }) => !turn);
/** The parts that are cut from the same sheets. Those that are cut from cloth by length are left out. */
const poolsOf = (parts) => {
    const pools = [];
    for (const part of parts) {
        if (!part.sheets)
            continue;
        const { sheet } = part.sheets;
        const oneWay = isOneWay(part);
        const known = pools.find((pool) => pool.oneWay === oneWay && isSameSheet(pool.sheet, sheet));
        if (known)
            known.parts.push(part);
        else
            pools.push({ sheet, oneWay, parts: [part] });
    }
    for (const { parts } of pools)
        parts.sort(byWeek);
    return pools;
};
const namedPieces = ({ title, pieces }) => pieces.map(({ piece = title, width, length, count, turn }) => ({
    width,
    height: length,
    count,
    turn,
    name: piece,
}));
/** What each piece of a joint list is called: all names that the parts give it. */
const namesOf = ({ from }) => from.map((pieces) => {
    const names = [];
    for (const { name } of pieces)
        if (!names.some((known) => isSame(known, name)))
            names.push(name);
    const [first] = names;
    return first && names.length === 1 ? first : say('anyPiece', { pieces: names });
});
/** How many sheets a part takes by itself. Throws a `Refusal` if its pieces do not fit on one. */
const aloneOf = (part, { sheet }, plan) => {
    const known = part.sheets?.count;
    if (known !== undefined)
        return known;
    const { pieces } = joined([namedPieces(part)]);
    const on = onSheet(sheet);
    const planned = plan(pieces, on);
    if (typeof planned === 'number')
        return refuse(sayOfPlan('planning', { done: planned }), 'parts');
    if (!planned.ok)
        return refuse(sayOfShop('about', { what: part.title, says: planned.problem }), 'parts');
    return canBeCut(pieces, on, planned) ? planned.count : refuse(sayOfPlan('unsound'), 'parts');
};
/** What a part cuts, from the sheets with these numbers, counted from 0. */
const ofPart = ({ when, title, week, pieces }, from, opened) => ({
    part: when,
    week,
    pieces: pieces.map(({ piece = title, width, length, count }) => new Cut(count, piece, width, length)),
    from: from.map((number) => number + 1),
    opened,
});
/** Each part cuts its own sheets. */
const apart = ({ parts }, alone) => {
    let first = 0;
    const weeks = parts.map((part, at) => {
        const count = alone[at] ?? 0;
        const from = Array.from({ length: Math.min(count, MOST_NUMBERS) }, (_, number) => first + number);
        first += count;
        return ofPart(part, from, count);
    });
    return { count: first, alone, weeks: first > MOST_NUMBERS ? undefined : weeks, laid: undefined };
};
/** Nobody reads a longer list of numbers. */
const MOST_NUMBERS = 1000;
/** The layout of a plan with its sheets in the order in which they are opened. */
const inOrder = (laid, numbers) => {
    const layout = laid.layout.map((piece) => ({ ...piece, sheet: numbers.get(piece.sheet) ?? piece.sheet }));
    return { ...laid, layout: layout.sort((a, b) => a.sheet - b.sheet) };
};
const weeksOf = ({ parts }, { shares }) => parts.flatMap((part, at) => {
    const share = shares[at];
    return share
        ? ofPart(part, share.cuts.map(({ sheet }) => sheet), share.opened)
        : [];
});
/** A joint plan, shared out to the parts. `all` has the pieces that they want. */
const sharedPool = (pool, alone, planned, all) => {
    const shared = shareOut(planned, all.pieces, all.wanted);
    const laid = planned.count ? laidOut(planned, onSheet(pool.sheet), namesOf(all)) : undefined;
    const numbers = shared && new Map(shared.order.map((place, number) => [place, number]));
    return {
        count: planned.count,
        alone,
        weeks: shared && weeksOf(pool, shared),
        laid: laid && numbers ? inOrder(laid, numbers) : laid,
        joint: { plan: planned, numbers },
    };
};
/**
 * The sheets for all parts of a pool: as one list of all their pieces takes, and never more than the parts take one after the other.
 * The plan is then shared out to the parts, so that each of them cuts from sheets that are open already, as far as they have its
 * pieces.
 */
const planPool = (pool, plan) => {
    const { parts } = pool;
    const alone = parts.map((part) => aloneOf(part, pool, plan));
    const separate = apart(pool, alone);
    if (parts.length < 2)
        return separate;
    const all = joined(parts.map(namedPieces));
    const on = onSheet(pool.sheet);
    const planned = plan(all.pieces, on);
    if (typeof planned === 'number')
        return { ...separate, isPlanning: true };
    if (!planned.ok || !canBeCut(all.pieces, on, planned) || planned.count > separate.count)
        return separate;
    return sharedPool(pool, alone, planned, all);
};

export { byWeek, namedPieces, namesOf, planPool, poolsOf, sharedPool };
