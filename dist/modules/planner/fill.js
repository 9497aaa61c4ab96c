/** How many more lots are looked at for a better fit, once one has been found. */
const LOOKS = 200;
/** How a lot fits a gap, best last. */
const NOT = 0;
const LOOSELY = 1;
const ONE_WAY = 2;
const EXACTLY = 3;
/**
 * Puts lots down by a recipe: each gap takes the first lot that fits it exactly, else exactly one way, else at all; a cut
 * through the gap then leaves two smaller ones. Whatever it lays out can therefore be cut edge to edge.
 *
 * @param height of a sheet; cloth without end has none.
 */
const filler = (lots, width, height) => {
    const end = lots.length;
    const widths = Float64Array.from(lots, (lot) => lot.width);
    const heights = Float64Array.from(lots, (lot) => lot.height);
    const slimmest = Math.min(...widths, ...heights);
    const area = lots.reduce((total, lot) => total + lot.count * lot.width * lot.height, 0);
    const left = new Int32Array(end);
    /** The lots in the order of the recipe, each naming the next; the last place names the first. */
    const next = new Int32Array(end + 1);
    let recipe;
    let stripsOnly;
    let pieces;
    let placed;
    let blocks;
    /** Gaps times lots looked at: what a search costs. */
    let effort = 0;
    let chosen = 0;
    let turned = false;
    const choose = (w, h) => {
        if (w < slimmest || h < slimmest)
            return false;
        let best = NOT;
        effort += 8;
        for (let before = end, looks = LOOKS; best < EXACTLY && looks;) {
            const lot = next[before];
            if (lot === end)
                break;
            if (!left[lot]) {
                next[before] = next[lot];
                continue;
            }
            before = lot;
            effort++;
            if (best)
                looks--;
            const turn = lots[lot].turn;
            let over = turn && recipe.turned[lot];
            let pw = over ? heights[lot] : widths[lot];
            let ph = over ? widths[lot] : heights[lot];
            for (let ways = turn ? 2 : 1; ways; ways--) {
                if (pw <= w && ph <= h) {
                    const fit = pw === w ? (ph === h ? EXACTLY : ONE_WAY) : ph === h ? ONE_WAY : LOOSELY;
                    if (fit > best) {
                        best = fit;
                        chosen = lot;
                        turned = over;
                    }
                }
                const other = pw;
                pw = ph;
                ph = other;
                over = !over;
            }
        }
        return best > NOT;
    };
    const fill = (x, y, w, h, stage, hasChosen = false) => {
        while (hasChosen || choose(w, h)) {
            hasChosen = false;
            const lot = chosen;
            const over = turned;
            const pw = over ? heights[lot] : widths[lot];
            const ph = over ? widths[lot] : heights[lot];
            const across = ph === h ? Math.min(left[lot], Math.floor(w / pw)) : 1;
            const down = pw === w && ph < h ? Math.min(left[lot], Math.floor(h / ph)) : 1;
            const bw = pw * across;
            const bh = ph * down;
            blocks.push({ lot, turned: over, x, y, across, down });
            left[lot] -= across * down;
            pieces -= across * down;
            placed += bw * bh;
            const lengthwise = stage === 'strip' || (stage === 'free' && (bh === h || (bw < w && recipe.lengthwise[lot])));
            if (lengthwise) {
                if (bh < h)
                    fill(x, y + bh, bw, h - bh, stage === 'strip' ? 'column' : stage);
                x += bw;
                w -= bw;
            }
            else {
                if (bw < w && stage === 'free')
                    fill(x + bw, y, w - bw, bh, stage);
                y += bh;
                h -= bh;
            }
        }
    };
    /** How many more times the bands can be cut from what is left; takes that many, at most `most`. */
    const repeat = (bands, most) => {
        if (most < 1 || !left[bands[0].blocks[0].lot])
            return 0;
        const uses = new Map();
        for (const band of bands)
            for (const { lot, across, down } of band.blocks)
                uses.set(lot, (uses.get(lot) ?? 0) + across * down * band.times);
        let times = most;
        uses.forEach((count, lot) => (times = Math.min(times, Math.floor(left[lot] / count))));
        if (times)
            uses.forEach((count, lot) => {
                left[lot] -= count * times;
                pieces -= count * times;
                placed += count * times * widths[lot] * heights[lot];
            });
        return times;
    };
    const fillSheet = (h) => {
        const bands = [];
        for (let y = 0; choose(width, h);) {
            const pw = turned ? heights[chosen] : widths[chosen];
            const ph = turned ? widths[chosen] : heights[chosen];
            const tall = !stripsOnly && pw < width && recipe.lengthwise[chosen] ? h : ph;
            blocks = [];
            fill(0, y, width, tall, stripsOnly ? 'strip' : 'free', true);
            const band = { y, height: tall, times: 1, blocks };
            band.times += repeat([band], Math.floor(h / tall) - 1);
            bands.push(band);
            y += tall * band.times;
            h -= tall * band.times;
        }
        return bands;
    };
    return {
        area,
        effort: () => effort,
        /** Lays everything out within a length of cloth, or within a number of sheets, as far as it goes. */
        layOut: (by, within, inStrips) => {
            recipe = by;
            stripsOnly = inStrips;
            pieces = 0;
            placed = 0;
            effort += end;
            let last = end;
            for (const lot of by.order) {
                last = next[last] = lot;
                pieces += left[lot] = lots[lot].count;
            }
            next[last] = end;
            const sheets = [];
            let used = 0;
            if (height === undefined) {
                const bands = fillSheet(within);
                sheets.push({ bands, times: 1 });
                for (const band of bands)
                    for (const { lot, turned, y, down } of band.blocks)
                        used = Math.max(used, y + down * (turned ? widths[lot] : heights[lot]) + (band.times - 1) * band.height);
            }
            else
                while (pieces && used < within) {
                    const bands = fillSheet(height);
                    const times = 1 + repeat(bands, within - used - 1);
                    sheets.push({ bands, times });
                    used += times;
                }
            return { sheets, used, unplaced: pieces ? Math.max(area - placed, Number.MIN_VALUE) : 0 };
        },
    };
};

export { filler };
