import { clothBound } from './bounds.js';
import { search } from './search.js';

/** Turns a layout on a sheet with swapped sides into one on the sheet as it is. */
const swapped = (sheets, from, to, height) => sheets.map(({ bands, times }) => {
    const blocks = bands.flatMap(({ blocks, height, times }) => Array.from({ length: times }, (_, i) => blocks.map(({ lot, turned, x, y, across, down }) => ({
        lot,
        turned: to[lot].width !== (turned ? from[lot].width : from[lot].height),
        x: y + i * height,
        y: x,
        across: down,
        down: across,
    }))).flat());
    return { bands: [{ y: 0, height, times: 1, blocks }], times };
});
/** The further ways: as cloth by length, if that may fit on one sheet; then without turning a piece. Each with either side across. */
function* moreWays(lots, width, height) {
    const over = lots.map((lot) => ({ ...lot, width: lot.height, height: lot.width }));
    const mayTurn = lots.every(({ turn, over, width, height }) => turn || over || width === height);
    yield { lots, across: width, bound: height };
    yield { lots: over, across: height, bound: width };
    const asked = lots.map((lot, i) => ({ ...(lot.over ? over[i] : lot), turn: false }));
    const sides = [[width, height], ...(mayTurn && width !== height ? [[height, width]] : [])];
    for (const [across, along] of sides)
        if (asked.every((lot) => lot.width <= across && lot.height <= along))
            yield { lots: asked, across, along, bound: clothBound(asked, across, along) };
}
/** Shares of the usual effort: for a further way, and for pieces that may not be turned. */
const HALF = 0.5;
const MOST_WAYS = 5;
/**
 * The layout that {@link search} finds. For sheets it tries further ways. Otherwise pieces that may be turned could take more sheets
 * than the same pieces that may not.
 */
function* searchWays(lots, width, height, bound, cheaper) {
    const turns = lots.some(({ turn, over }) => turn || over);
    if (height === undefined)
        return yield* search(lots, width, height, bound, cheaper);
    let ways = 0;
    const within = function* (steps) {
        let step = steps.next();
        for (; !step.done; step = steps.next())
            yield (ways + step.value) / MOST_WAYS;
        ways++;
        return step.value;
    };
    const first = yield* within(search(lots, width, height, bound, cheaper, turns ? 1 : HALF));
    const least = first.bound;
    let best = first.layout;
    if (turns)
        for (const { lots: from, across, along, bound } of moreWays(lots, width, height)) {
            if (best.used <= least)
                break;
            if (along ? best.used <= bound : least > 1)
                continue;
            const { layout } = yield* within(search(from, across, along, bound, cheaper, HALF));
            const used = along ? layout.used : layout.used <= bound ? 1 : Infinity;
            if (used < best.used)
                best = {
                    sheets: across === width ? layout.sheets : swapped(layout.sheets, from, lots, height),
                    used,
                    unplaced: 0,
                };
        }
    return { layout: best, bound: least };
}

export { searchWays };
