import { joined } from '../../ledger/joined.js';
import { total, count } from '../../ledger/quantity.js';
import { wholeDown, toMark } from '../../measure/exact.js';
import { fewest } from '../../planner/joins.js';
import { fewestLengths } from '../../planner/fewest-lengths.js';
import { say } from './shape.js';

/**
 * The pieces of a border by their cut width, in the sizes of the cut list. A mark may be below the exact size, by less than anybody
 * can cut. Then the exact size counts, so that the cloth is enough for both.
 */
const lotsOf = (pieces, mark) => {
    const takes = (size) => toMark(size.value, mark.value).gt(size.value) ? size.onMark(mark).asResult() : size;
    const lots = [];
    for (const piece of pieces) {
        const width = takes(piece.width);
        let lot = lots.find((lot) => lot.width.value.equals(width.value));
        if (!lot)
            lots.push((lot = { width, pieces: [] }));
        lot.pieces.push({ count: piece.count, length: takes(piece.length) });
    }
    return lots;
};
const times = ({ length, count: many }) => count(many).times(length);
const joinAll = (lot, cloth, loss) => {
    const need = total(lot.pieces.map(times));
    const strips = fewest(need.value, cloth.value, loss.value);
    if (!strips)
        return undefined;
    const joins = strips - 1;
    const reach = joined(strips, cloth, count(joins).times(loss));
    return { lot, strips, joins, how: say('allJoined', { reach, need }) };
};
const makeEach = (lot, cloth, loss) => {
    const gained = cloth.minus(loss);
    /** The rest of each piece, after its whole strips. */
    const rests = [];
    let whole = 0;
    for (const { length, count } of lot.pieces) {
        const strips = fewest(length.value, cloth.value, loss.value);
        if (!strips)
            return undefined;
        whole += (strips - 1) * count;
        rests.push({ length: length.minus(gained.times(strips - 1)).asResult(), count });
    }
    const shared = fewestLengths(rests.flatMap(({ length, count }) => Array(count).fill(length.value)), cloth.value);
    const how = say('eachSeparate', { whole, shared, pieces: rests.map(times), loss });
    return { lot, strips: whole + shared, joins: whole, how };
};
const countOf = (things, key) => things.reduce((all, thing) => all + thing[key], 0);
/** Strips from selvage to selvage. None if the cloth is too narrow for its joins. */
const across = ({ inputs: { seam }, values: { join } }, plan, cut, lots, { width, toBuy }, row) => {
    // One row shows the strips of all lots.
    const counted = (strips) => (lots.length > 1 ? count(strips) : count(strips).inRow(row));
    const made = lots.flatMap((lot) => cut(lot, width, join === 'diagonal' ? lot.width : seam.times(2).asResult()) ?? []);
    if (made.length < lots.length)
        return [];
    return [
        {
            plan,
            strips: countOf(made, 'strips'),
            joins: countOf(made, 'joins'),
            fabric: toBuy(total(made.map(({ lot, strips }) => counted(strips).times(lot.width)))),
            how: say('eachWidth', { widths: made.map(({ how }) => how) }),
        },
    ];
};
/**
 * Puts pieces side by side across the cloth, longest first. A row is as long as its longest piece, and shorter pieces lie behind
 * each other in it. Gives back the longest piece of each row.
 */
const laidAlong = (lots, cloth) => {
    const pieces = lots
        .flatMap(({ width, pieces }) => pieces.flatMap(({ length, count }) => Array.from({ length: count }, () => ({ width, length }))))
        .sort((a, b) => b.length.value.compare(a.length.value));
    const rows = [];
    const columns = [];
    let isBehind = false;
    for (const { width: { value: width }, length, } of pieces) {
        let column = columns.find((column) => column.width.gte(width) && column.length.gte(length.value));
        if (column)
            isBehind = true;
        else {
            let row = rows.find(({ left }) => left.gte(width));
            if (!row)
                rows.push((row = { longest: length, left: cloth }));
            row.left = row.left.sub(width);
            columns.push((column = { width, length: row.longest.value }));
        }
        column.length = column.length.sub(length.value);
    }
    return { rows: rows.map(({ longest }) => longest), pieces: pieces.length, isBehind };
};
/** Strips parallel to the selvage. None if one is wider than the cloth. */
const along = ({ inputs }, lots, { width, kept, toBuy }) => {
    if (lots.some((lot) => lot.width.value.gt(width.value)))
        return [];
    const { rows, pieces, isBehind } = laidAlong(lots, width.value);
    const [first, ...others] = lots;
    const each = first && !others.length ? width.over(first.width) : undefined;
    const fabric = toBuy(total(rows));
    const shrinkage = kept.equals(1) ? undefined : inputs.shrinkage;
    return [
        {
            plan: 'along',
            strips: pieces,
            joins: 0,
            fabric,
            how: say('sideBySide', {
                across: each,
                fit: each ? wholeDown(each.value) : 0,
                rows: rows.length,
                isBehind,
            }),
            longest: rows.length > 1 ? undefined : say('longestPiece', { fabric, shrinkage }),
        },
    ];
};
/** Every way to cut a border that this cloth allows: joined, separate, along. `row` is the row for the number of strips. */
const plansFor = (ledger, lots, cloth, row) => [
    ...across(ledger, 'joined', joinAll, lots, cloth, row),
    ...across(ledger, 'separate', makeEach, lots, cloth, row),
    ...along(ledger, lots, cloth),
];
/**
 * The plan to use, or undefined if this grain has none. Across the cloth it is the plan with fewer strips (or less cloth, if strips
 * have two widths), then the one with fewer joins. If both are equal, the joined plan is used, unless pieces have to be kept apart.
 */
const bestPlan = (plans, grain) => plans
    .filter(({ plan }) => (plan === 'along') === (grain === 'along'))
    .sort((a, b) => a.fabric.value.compare(b.fabric.value) || a.joins - b.joins)[0];

export { along, bestPlan, countOf, lotsOf, plansFor };
