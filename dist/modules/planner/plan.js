import { ZERO, exact, sum, wholeUp, upTo } from '../measure/exact.js';
import { clothBound } from './bounds.js';
import { breathe } from './breathe.js';
import { noPlan, say, refuse, gridFor } from './grid.js';
import { readable } from './readable.js';
import { searchWays } from './ways.js';

const MOST_LOTS = 1000;
/** How many pieces a plan places one by one. Equal strips count as one. Longer lists are cut in strips only. */
const MOST_PLACED = 5000;
/** The tallest first, and of equal ones the line with most of them. So the order of a list does not matter. */
const tallestFirst = (a, b) => b.height - a.height || b.width - a.width || b.count - a.count;
/** The pieces on the grid, turned if they fit only that way; or why they cannot be planned. */
const fitting = (pieces, cloth) => {
    const edges = [cloth.width, cloth.height, cloth.step].filter((size) => size !== undefined);
    const refused = refuse(edges, pieces.map(({ width, height, count }) => ({ sizes: [width, height], count })));
    if (refused)
        return refused;
    const needed = pieces.flatMap((piece, place) => (piece.count ? [{ ...piece, place }] : []));
    const longest = sum(needed.map(({ width, height, count }) => width.add(height).mul(count)));
    const area = longest.add(1).mul(cloth.width.add(1)).valueOf();
    const lengths = [...edges, ...needed.flatMap(({ width, height }) => [width, height])];
    const grid = gridFor(lengths, Math.sqrt(Number.MAX_SAFE_INTEGER / area) / 2);
    const width = grid.down(cloth.width);
    const height = cloth.height && grid.down(cloth.height);
    const sizes = [];
    for (const { place, width: w, height: h, count, turn } of needed) {
        const fits = (w, h) => w.lte(cloth.width) && (!cloth.height || h.lte(cloth.height));
        const over = !fits(w, h);
        if (over && !(turn && fits(h, w)))
            return noPlan(cloth.height ? say('largerThanSheet') : say('largerThanCloth', { cloth: cloth.width }), place);
        const across = grid.up(over ? h : w);
        const along = grid.up(over ? w : h);
        // A coarse grid would round a piece that is as large as the cloth past its edge.
        const snug = { width: Math.min(across, width), height: Math.min(along, height ?? along) };
        const rounded = snug.width < across || snug.height < along;
        sizes.push({
            piece: place,
            ...snug,
            count,
            over,
            turn: turn && !over && !rounded && !w.equals(h) && fits(h, w),
        });
    }
    return { grid, width, height, sizes: sizes.sort(tallestFirst) };
};
/**
 * Divides each size into several lots, so that a search can put them in different places: half of the pieces, half of the rest,
 * and so on. If there are many sizes, it makes fewer lots of each.
 */
const lotsOf = (sizes) => sizes.flatMap((size) => {
    const lots = [];
    for (let left = size.count; left; left -= lots.at(-1).count) {
        const isLast = (lots.length + 2) * sizes.length > MOST_LOTS;
        lots.push({ ...size, count: isLast ? left : Math.ceil(left / 2) });
    }
    return lots;
});
/** How many lots that makes of a list, which tells how long a plan takes, however many pieces there are. */
const lotsIn = (pieces) => pieces.reduce((all, { count }) => all + (count && 1 + Math.floor(Math.log2(count))), 0);
/** The least that any plan can need, on the grid. If the grid rounded the sizes up, only the area of the pieces is proof. */
const boundOf = ({ sizes, width, height, grid }, pieces, cloth) => {
    if (grid.exact)
        return clothBound(sizes, width, height);
    const area = sum(sizes.map(({ piece, count }) => pieces[piece].width.mul(pieces[piece].height).mul(count)));
    return cloth.height ? wholeUp(area.div(cloth.width.mul(cloth.height))) : grid.down(area.div(cloth.width));
};
/** A layout in inches, in the order in which a person reads it. */
const sheetsOf = (layout, lots, { grid, height }, pieces, cloth) => {
    // On a coarse grid, a piece as tall as the sheet is a little taller than the grid says.
    const tall = (along) => cloth.height && along === height ? cloth.height : grid.inches(along);
    const placedOn = (y) => ({ piece, turned, x, y: down }) => {
        const { width, height } = pieces[piece];
        const [w, h] = turned ? [height, width] : [width, height];
        return { piece, turned, x: grid.inches(x), y: y.add(grid.inches(down)), width: w, height: h };
    };
    return readable(layout, lots).map(({ times, strips }) => {
        let used = ZERO;
        const made = strips.map(({ height, times, spots }) => {
            const y = used;
            used = y.add(tall(height).mul(times));
            const counts = new Map();
            for (const { piece } of spots)
                counts.set(piece, (counts.get(piece) ?? 0) + 1);
            const cuts = Array.from(counts, ([piece, count]) => ({ piece, count }));
            return { y, height: tall(height), times, cuts, placed: spots.map(placedOn(y)) };
        });
        return { times, strips: made, used };
    });
};
/** Makes a plan step by step. Yields its progress, from 0 to 1, every few milliseconds. */
function* steps(pieces, cloth) {
    const fit = fitting(pieces, cloth);
    if ('ok' in fit)
        return fit;
    yield 0;
    const { sizes, width, height, grid } = fit;
    const bound = boundOf(fit, pieces, cloth);
    yield 0;
    const { step } = cloth;
    const total = sizes.reduce((all, { count }) => all + count, 0);
    const cheaper = (used) => total > MOST_PLACED ? 0 : step ? grid.down(upTo(grid.inches(used), step).sub(step)) : used;
    const lots = lotsOf(sizes);
    const found = lots.length ? yield* searchWays(lots, width, height, bound, cheaper) : undefined;
    const layout = found?.layout.sheets ?? [];
    const blocks = layout.flatMap(({ bands }) => bands.flatMap(({ blocks }) => blocks));
    if (blocks.reduce((all, { across, down }) => all + across * down, 0) > MOST_PLACED)
        return noPlan(say('tooManyToPlace'));
    yield 1;
    const sheets = sheetsOf(layout, lots, fit, pieces, cloth);
    const count = sheets.reduce((all, { times }) => all + times, 0);
    const length = cloth.height ?? sheets[0]?.used ?? ZERO;
    // The search may know a better bound, but sizes that were rounded up prove nothing.
    const known = grid.exact && found ? found.bound : bound;
    const least = cloth.height ? exact(known) : grid.inches(known);
    const isLeast = least.equals(cloth.height ? count : length);
    return { ok: true, sheets, count, length, bound: least, exact: isLeast };
}
/**
 * How to cut the pieces from the least cloth, or from the fewest sheets, with edge-to-edge cuts only. The plan starts with strips
 * across the cloth, unless another order of cuts saves cloth. The same list always gives the same plan. If the pieces cannot be
 * planned, the plan is a problem. Nothing is thrown.
 */
const planCloth = (pieces, cloth) => {
    const plan = steps(pieces, cloth);
    for (;;) {
        const { done, value } = plan.next();
        if (done)
            return value;
    }
};
/**
 * The same plan as `planCloth`, made a few milliseconds at a time, so that the page keeps working.
 *
 * @param signal stops the planning. The promise then rejects with the signal's reason.
 * @param onProgress is told how much is done, from 0 to 1.
 */
const planClothAsync = async (pieces, cloth, { signal, onProgress } = {}) => {
    const plan = steps(pieces, cloth);
    for (;;) {
        signal?.throwIfAborted();
        const { done, value } = plan.next();
        if (done)
            return value;
        onProgress?.(value);
        await breathe();
    }
};
/** Every piece of a plan, one by one, on numbered sheets; at most `most` of them. */
const everyPiece = (plan, most = MOST_PLACED) => {
    const all = [];
    let sheet = 0;
    for (const { times, strips } of plan.sheets)
        for (let copy = 0; copy < times && all.length < most; copy++, sheet++)
            for (const { placed, times, height } of strips)
                for (let i = 0; i < times && all.length < most; i++)
                    for (const spot of placed)
                        if (all.length < most)
                            all.push({ ...spot, sheet, y: spot.y.add(height.mul(i)) });
    return all;
};

export { everyPiece, lotsIn, planCloth, planClothAsync };
