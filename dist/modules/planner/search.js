import { leastOfFew } from './few.js';
import { filler } from './fill.js';

/** Gaps times lots that a search looks at: a count, so that every machine finds the same plan. */
const EFFORT = { least: 1_000_000, perLot: 100_000, most: 20_000_000 };
/** Between pauses: a few milliseconds. */
const SLICE = 200_000;
/** Shares of the effort: plans in strips, plans cut in any order, and making a plan in strips tidier. */
const SHARE = { strips: 0.15, free: 0.75, tidy: 0.1 };
/** Few lots are as tidy as they can be after fewer tries, which are most of what a short list's plan costs. */
const FEW_LOTS = 8;
const TIDY_PER_LOT = 10_000;
/** A seeded generator (xorshift), so that the same list always gives the same plan. */
const dice = () => {
    let seed = 12345;
    return (sides) => {
        seed ^= seed << 13;
        seed ^= seed >>> 17;
        seed ^= seed << 5;
        return Math.floor(((seed >>> 0) / 2 ** 32) * sides);
    };
};
const copy = ({ order, turned, lengthwise }) => ({
    order: [...order],
    turned: [...turned],
    lengthwise: [...lengthwise],
});
/** Changes a recipe a little; what it returns undoes the change. */
const vary = ({ order, turned, lengthwise }, roll) => {
    const kind = roll(10);
    const a = roll(order.length);
    const b = roll(order.length);
    if (kind < 3) {
        const swap = () => void ([order[a], order[b]] = [order[b], order[a]]);
        swap();
        return swap;
    }
    if (kind < 6) {
        const move = (from, to) => void order.splice(to, 0, ...order.splice(from, 1));
        move(a, b);
        return () => move(b, a);
    }
    const bits = kind < 8 ? turned : lengthwise;
    const flip = () => void (bits[a] = !bits[a]);
    flip();
    return flip;
};
/** Orders worth starting from: each way of turning the pieces, largest or tallest first. */
const starts = (lots, width) => {
    const clothFor = (across, tall) => across > width ? Infinity : tall / Math.floor(width / across);
    const ways = [
        ({ width, height }) => width < height,
        ({ width, height }) => width > height,
        (lot) => clothFor(lot.height, lot.width) < clothFor(lot.width, lot.height),
    ];
    return ways.flatMap((way) => {
        const turned = lots.map((lot) => lot.turn && way(lot));
        const tall = lots.map(({ width, height }, i) => (turned[i] ? width : height));
        const by = (key) => ({
            order: lots.map((_, i) => i).sort((a, b) => key(b) - key(a)),
            turned,
            lengthwise: lots.map(() => false),
        });
        return [by((i) => lots[i].width * lots[i].height), by((i) => tall[i])];
    });
};
/**
 * Each strip height is measured anew, so fewer heights come first; then fewer strips that are not alike; then fewer
 * pieces trimmed or stacked in their strip.
 */
const untidiness = ({ sheets }, lots) => {
    const heights = new Set();
    const kinds = new Set();
    let trims = 0;
    for (const { bands } of sheets)
        for (const { height, times, blocks } of bands) {
            heights.add(height);
            const counts = [height];
            for (const { lot, turned, across, down } of blocks) {
                const piece = lots[lot];
                const place = 2 * piece.piece + (turned ? 2 : 1);
                counts[place] = (counts[place] ?? 0) + across * down;
                if ((turned ? piece.width : piece.height) < height)
                    trims += across * down * times;
            }
            kinds.add(counts.join());
        }
    return (heights.size * 1e4 + kinds.size) * 1e6 + trims;
};
/**
 * Looks for the layout that uses least. A plan in strips is kept unless one cut in another order uses less.
 * Yields its progress from 0 to 1 every few milliseconds.
 *
 * @param height of a sheet; cloth bought by length has none.
 * @param bound what no layout can do with less than, in steps of the grid or in sheets.
 * @param cheaper how little another order of cutting has to use to save anything, where strips use so much.
 * @param worth the share of the usual effort that it may take.
 */
function* search(lots, width, height, bound, cheaper, worth = 1) {
    const { area, effort, layOut } = filler(lots, width, height);
    const roll = dice();
    const total = worth * Math.min(EFFORT.most, EFFORT.least + EFFORT.perLot * lots.length);
    let shown = 0;
    const pause = function* () {
        if (effort() - shown < SLICE)
            return;
        shown = effort();
        yield Math.min(1, shown / total);
    };
    const recipes = starts(lots, width);
    yield 0;
    let recipe = recipes[0];
    let layout;
    for (const start of recipes) {
        const tried = layOut(start, Number.MAX_SAFE_INTEGER, true);
        if (!layout || tried.used < layout.used)
            [layout, recipe] = [tried, start];
        yield* pause();
    }
    /** The best so far, and whether it is strips across the cloth first. */
    let found = { layout: layout, inStrips: true };
    const useLess = function* (inStrips, share) {
        const by = copy(recipe);
        const aim = () => found.layout.used - Math.max(1, Math.floor((found.layout.used - bound) / 16));
        let goal = inStrips ? aim() : Math.min(aim(), cheaper(found.layout.used));
        let now = Infinity;
        for (const end = effort() + total * share; goal >= bound && effort() < end;) {
            const undo = vary(by, roll);
            const tried = layOut(by, goal, inStrips);
            if (!tried.unplaced) {
                found = { layout: tried, inStrips };
                recipe = copy(by);
                goal = aim();
                now = Infinity;
            }
            else if (tried.unplaced <= now + (area * 0.002 * roll(1000) * roll(1000)) / 1e6)
                now = tried.unplaced;
            else
                undo();
            yield* pause();
        }
    };
    yield* useLess(true, SHARE.strips);
    const few = found.layout.used > bound
        ? yield* leastOfFew(lots, width, height, found.layout.used, shown / total)
        : undefined;
    if (few)
        bound = few.used;
    else
        yield* useLess(false, SHARE.free);
    if (few && few.used < found.layout.used && few.used <= cheaper(found.layout.used))
        return { layout: few, bound };
    const { inStrips } = found;
    let now = untidiness(found.layout, lots);
    // Whole strips of one size that lies one way, and one that is not whole: nothing is tidier.
    if (lots.every(({ piece, turn }) => !turn && piece === lots[0].piece))
        return { layout: found.layout, bound };
    const tidying = lots.length > FEW_LOTS ? total * SHARE.tidy : lots.length * TIDY_PER_LOT;
    for (const end = effort() + tidying; effort() < end;) {
        const undo = vary(recipe, roll);
        const tried = layOut(recipe, found.layout.used, inStrips);
        const untidy = untidiness(tried, lots);
        if (tried.unplaced || untidy > now)
            undo();
        else {
            now = untidy;
            found = { layout: tried, inStrips };
        }
        yield* pause();
    }
    return { layout: found.layout, bound };
}

export { search };
