import { areasOf, givenBy } from './given-by.js';

/** Nobody reads a list of more sheets. */
const MOST_SHEETS = 1000;
/** The sheets of a plan. Equal ones are together. */
const kindsOf = ({ sheets }, pieces) => {
    let place = 0;
    return sheets.map((sheet) => {
        const { times } = sheet;
        return { places: Array.from({ length: times }, () => place++), gives: givenBy(sheet, pieces) };
    });
};
/** As much of a list's rest as a sheet has. Takes it from both. */
const take = (left, rest) => left.map((has, piece) => {
    const count = Math.min(has, rest[piece] ?? 0);
    left[piece] = has - count;
    rest[piece] = (rest[piece] ?? 0) - count;
    return count;
});
const isSome = (counts) => counts.some((count) => count > 0);
/**
 * Shares a plan of several lists out to them, in their order. Equal pieces are interchangeable, so a list takes what the sheets that
 * are open already still have, and then opens those that give most of the rest. Undefined if there are too many sheets, or if the
 * plan does not have what the lists want.
 */
const shareOut = (plan, pieces, wanted) => {
    if (plan.count > MOST_SHEETS)
        return undefined;
    const areas = areasOf(pieces);
    const kinds = kindsOf(plan, pieces.length);
    const open = [];
    const order = [];
    /** The area of what a kind would give to this rest. */
    const helps = ({ places, gives }, rest) => places.length
        ? gives.reduce((all, has, piece) => all + Math.min(has, rest[piece] ?? 0) * (areas[piece] ?? 0), 0)
        : 0;
    const openFor = (rest) => {
        const [best] = kinds.map((kind) => ({ kind, area: helps(kind, rest) })).sort((a, b) => b.area - a.area);
        const place = best?.area ? best.kind.places.shift() : undefined;
        if (!best || place === undefined)
            return false;
        order.push(place);
        open.push([...best.kind.gives]);
        return true;
    };
    const shareFor = (counts) => {
        const rest = [...counts];
        const before = open.length;
        const cuts = [];
        for (let sheet = 0; isSome(rest); sheet += 1) {
            if (sheet === open.length && !openFor(rest))
                return undefined;
            const left = open[sheet];
            const taken = left ? take(left, rest) : [];
            if (isSome(taken))
                cuts.push({ sheet, counts: taken });
        }
        return { cuts, opened: open.length - before };
    };
    const shares = wanted.flatMap((counts) => shareFor(counts) ?? []);
    return shares.length === wanted.length ? { shares, order } : undefined;
};

export { shareOut };
