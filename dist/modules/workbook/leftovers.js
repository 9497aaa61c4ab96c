import { onSheet } from '../calculators/cutting/sheets.js';
import { usualLength } from '../ledger/lengths.js';
import { ZERO, most, ONE, least, downTo } from '../measure/exact.js';
import { toStep } from '../measure/shop.js';
import { joined } from '../planner/canonical.js';
import { canBeCut } from '../planner/check.js';
import { freeOf } from '../planner/free.js';
import { LEAST_LEFTOVER, RULER_MARK } from '../trade/conventions.js';
import { sheetsToCut, lengthsToBuy } from './cloths.js';
import { namedPieces } from './pool.js';

/** The plan of a part by itself: its own, or one that is made now. Undefined if there is none yet. */
const planOf = (part, on, plan) => {
    if (part.plan)
        return part.plan;
    const { pieces } = joined([namedPieces(part)]);
    const planned = plan(pieces, on);
    return typeof planned !== 'number' && planned.ok && canBeCut(pieces, on, planned) ? planned : undefined;
};
/** What one part leaves of its own cloth. */
const besidePart = (part, length, plan) => {
    const { width, pieces, leaves = [] } = part;
    if (!pieces.length)
        return leaves.filter(({ x, y, ...one }) => x.add(one.width).lte(width) && y.add(one.height).lte(length));
    const planned = width.gt(0) ? planOf(part, { width }, plan) : undefined;
    if (!planned || planned.length.gt(length))
        return [];
    const rest = { x: ZERO, y: planned.length, width, height: length.sub(planned.length) };
    return [...freeOf(planned, { width }), ...(rest.height.gt(0) ? [rest] : [])];
};
/** What is left of a stretch of cloth, and how long it is after the wash. */
const besideStretch = ({ parts, need, laid }, plan) => {
    if (laid)
        return { free: freeOf(laid.plan, laid.on), length: laid.plan.length };
    const [part] = parts;
    const length = part ? need.div(part.washed) : need;
    return { free: part ? besidePart(part, length, plan) : [], length };
};
/** What is left of a bought length: beside its stretches, and beyond the last of them. */
const besideLength = ({ parts, need, stretches }, sheet, step, plan) => {
    let y = ZERO;
    const left = stretches.flatMap((stretch) => {
        const { free, length } = besideStretch(stretch, plan);
        const start = y;
        y = y.add(length);
        return free.map((one) => ({ ...one, y: one.y.add(start), sheet }));
    });
    const widths = parts.map(({ width }) => width).filter((width) => width.gt(0));
    const height = toStep(need, step)
        .sub(need)
        .div(most(ONE, ...parts.map(({ washed }) => washed)));
    if (widths.length && height.gt(0))
        left.push({ x: ZERO, y, width: least(...widths), height, sheet, isEnd: true });
    return left;
};
/** What a line of the list leaves of the cloth that is bought. */
const leftOfLine = (cloth, step, plan) => lengthsToBuy(cloth).flatMap((length, at) => besideLength(length, at, step, plan));
/** What is left of sheets. Nothing if none is bought. */
const leftOfSheets = (cloth, plan) => {
    const { joint, alone, count } = sheetsToCut(cloth);
    const { sheet, parts } = cloth.pool;
    const on = onSheet(sheet);
    if (!(cloth.own?.buy ?? count))
        return [];
    if (joint)
        return freeOf(joint.plan, on).map((one) => ({
            ...one,
            sheet: joint.numbers?.get(one.sheet) ?? one.sheet,
        }));
    let first = 0;
    return parts.flatMap((part, at) => {
        const start = first;
        const own = alone[at] ?? 0;
        first += own;
        const planned = planOf(part, on, plan);
        return planned && planned.count <= own
            ? freeOf(planned, on).map((one) => ({ ...one, sheet: one.sheet + start }))
            : [];
    });
};
/** Nobody reads a longer list. */
const MOST_NAMED = 5;
/** The shorter side of the smallest piece that is named. */
const leastLeftover = (style) => usualLength(LEAST_LEFTOVER, style);
/** A size that a reader can measure in it: rounded down to the marks of her ruler. */
const measurable = ({ width, height }, { units }) => {
    const mark = usualLength(RULER_MARK, { units });
    return { width: downTo(width, mark), length: downTo(height, mark) };
};
/** What a line of the list leaves. It is reckoned once, when somebody first asks for it. */
const leftoversOf = (leftOf, style) => {
    let all;
    let worth;
    const left = () => (all ??= leftOf());
    return { left, named: () => (worth ??= worthKeeping(left(), style)) };
};
const areaOf = ({ width, length }) => width.mul(length);
/** The pieces that are worth keeping, the largest sizes first. */
const worthKeeping = (left, style) => {
    const least = leastLeftover(style);
    const sizes = new Map();
    for (const one of left) {
        const size = measurable(one, style);
        if (size.width.lt(least) || size.length.lt(least))
            continue;
        const key = `${size.width.toFraction()} ${size.length.toFraction()}`;
        const known = sizes.get(key);
        if (known)
            known.count += 1;
        else
            sizes.set(key, { count: 1, ...size });
    }
    return [...sizes.values()].sort((a, b) => areaOf(b).compare(areaOf(a))).slice(0, MOST_NAMED);
};

export { MOST_NAMED, leastLeftover, leftOfLine, leftOfSheets, leftoversOf, measurable };
