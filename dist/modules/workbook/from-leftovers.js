import { Cut } from '../ledger/purchase.js';
import { SMALL_SPARE } from '../ledger/shop.js';
import { most, ONE } from '../measure/exact.js';
import { areaOf, around } from '../planner/free.js';
import { cutFromOwn } from '../planner/own-pieces.js';
import { everyPiece } from '../planner/plan.js';
import { clothOf } from './cloths.js';
import { leftOfSheets, leftOfLine, measurable } from './leftovers.js';
import { say } from './sayings.js';

/** So many rectangles are tried, the largest of all. */
const MOST_TRIED = 8;
const bottomOf = ({ y, height }) => y.add(height);
/** A rectangle as it may be used. Of the end of a length, as much is kept as one crooked cut may cost. */
const usable = ({ isEnd, height, ...one }) => ({
    ...one,
    height: isEnd ? height.sub(SMALL_SPARE) : height,
});
/** What a plan leaves of a rectangle, where it lies on its cloth. Nobody draws that plan, so it may be cut in any order. */
const restOf = (from, plan) => {
    const pieces = everyPiece(plan).map((one) => ({ ...one, x: one.x.add(from.x), y: one.y.add(from.y) }));
    return around(pieces, from).map((one) => {
        const left = { ...one, sheet: from.sheet };
        return from.isEnd && bottomOf(left).equals(bottomOf(from)) ? { ...left, isEnd: true } : left;
    });
};
/** Cuts all pieces of a way from these rectangles, in their order. Undefined if that is not possible, or not known yet. */
const fitOn = (way, from, plan) => {
    const room = from.reduce((all, one) => all + areaOf(one).valueOf(), 0);
    const area = way.reduce((all, { width, length, count }) => all + width.mul(length).valueOf() * count, 0);
    // Most of what is left is too small, and a plan takes time.
    if (area > room * (1 + 1e-9))
        return undefined;
    const pieces = way.map(({ width, length, count, turn }) => ({
        width,
        height: length,
        count,
        turn,
    }));
    const cut = cutFromOwn(pieces, from.map((one) => ({ ...usable(one), count: 1 })), plan);
    if (typeof cut === 'number' || cut.rest.some(Boolean))
        return undefined;
    return {
        way,
        used: cut.used.flatMap(({ own, plan }) => {
            const one = from[own];
            return one ? [{ from: one, plan, left: restOf(one, plan) }] : [];
        }),
    };
};
/** The first way that fits: on one rectangle, the smallest that is large enough, or else on several. */
const fitFor = ({ fromLeftover: ways = [] }, left, plan) => {
    const largest = left
        .filter((one) => usable(one).height.gt(0))
        .sort((a, b) => areaOf(b).compare(areaOf(a)))
        .slice(0, MOST_TRIED);
    const tries = [...[...largest].reverse().map((one) => [one]), largest];
    for (const way of ways)
        for (const from of tries) {
            const fit = fitOn(way, from, plan);
            if (fit)
                return fit;
        }
    return undefined;
};
/** Whether what this cloth leaves may be used for a part: it is of its fabric, if it names one, and it is washed as much. */
const isFor = (part, { letter, parts }) => (!part.fabric || letter === part.fabric) &&
    most(ONE, ...parts.map(({ washed }) => washed)).gte(part.washed);
const backIn = ({ parts }) => parts.find(({ leaves }) => leaves);
const told = (ledger, declared, part, cloth, { way, used }) => {
    const { letter } = cloth;
    const of = backIn(cloth) ?? (letter ? undefined : cloth.parts[0]);
    const from = used.map(({ from }) => measurable(from, ledger.style));
    return {
        title: part.title,
        fabric: letter,
        name: declared.find((fabric) => fabric.letter === letter)?.name ?? '',
        text: say('fromLeftover', { letter, of: of?.title, pieces: from }),
        from,
        cuts: way.map(({ count, piece, width, length }) => new Cut(count, piece ?? part.title, width, length)),
        used: { part, cut: used },
    };
};
/** Cuts parts from what these cloths leave, one after the other. Those that do not fit come back as `missing`. */
const assigned = (ledger, declared, parts, rests, plan) => {
    const taken = [];
    const take = (part) => rests.some((rest) => {
        const fit = isFor(part, rest.cloth) ? fitFor(part, rest.left, plan) : undefined;
        if (!fit)
            return false;
        rest.left = [
            ...rest.left.filter((one) => !fit.used.some(({ from }) => from === one)),
            ...fit.used.flatMap(({ left }) => left),
        ];
        taken.push(told(ledger, declared, part, rest.cloth, fit));
        return true;
    });
    const missing = parts.filter((part) => !take(part));
    return { taken, missing };
};
/** Plans all fabrics without these parts, with own cloth as it is at first. What has not changed is not planned again. */
const planned = (ledger, declared, groups, without, before, plan) => groups.map((group, at) => {
    const parts = group.parts.filter((part) => !without.includes(part));
    const known = before[at];
    if (known?.group.parts.length === parts.length)
        return known;
    const { stock } = declared.find(({ letter }) => letter === group.letter) ?? {};
    return clothOf(ledger, { ...group, parts }, stock?.copy(), plan);
});
/**
 * How all parts are cut. Those that may be cut from what others leave are, if their pieces fit there by a plan: what the backing
 * leaves first, then what any other fabric leaves. One that does not fit is bought, and then the others are tried again, because
 * its cloth is planned with that of its fabric.
 */
const settle = (ledger, declared, groups, plan) => {
    const step = ledger.values.increment;
    const late = groups.flatMap(({ parts }) => parts).filter(({ fromLeftover }) => fromLeftover);
    const leftIn = (cloth) => 'pool' in cloth ? leftOfSheets(cloth, plan) : leftOfLine(cloth, step, plan);
    let open = late;
    let cloths = [];
    for (;;) {
        cloths = planned(ledger, declared, groups, open, cloths, plan);
        if (!open.length)
            return { cloths, fromLeftovers: [], leftOf: leftIn };
        const rests = cloths
            .flatMap(({ lines, pools }) => [...lines, ...pools])
            .map((cloth) => ({ cloth, left: leftIn(cloth) }))
            .sort((a, b) => Number(!!backIn(b.cloth)) - Number(!!backIn(a.cloth)));
        const { taken, missing } = assigned(ledger, declared, open, rests, plan);
        const [first] = missing;
        if (!first)
            return {
                cloths,
                fromLeftovers: taken,
                leftOf: (cloth) => rests.find((rest) => rest.cloth === cloth)?.left ?? [],
            };
        open = open.filter((part) => part !== first);
    }
};

export { settle };
