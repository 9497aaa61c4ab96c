/** Limits for the ways to divide the pieces, and for the shapes to look at. A list with more than a few pieces goes over them. */
const MOST_WAYS = 100_000;
const EFFORT = 400_000;
/** Work between two pauses: a few milliseconds. */
const SLICE = 100_000;
/** Puts a shape in its place, unless another one fits into it. Drops the shapes that it fits into. */
const placeFor = (shapes, width, height) => {
    let at = 0;
    for (let end = shapes.length; at < end;) {
        const middle = (at + end) >> 1;
        if (shapes[middle].width < width)
            at = middle + 1;
        else
            end = middle;
    }
    if (at && shapes[at - 1].height <= height)
        return undefined;
    let end = at;
    while (end < shapes.length && shapes[end].height >= height)
        end++;
    if (end < shapes.length && end === at && shapes[at].width === width)
        return undefined;
    if (end > at)
        shapes.splice(at, end - at);
    return at;
};
/** Puts two shapes below each other, and side by side, if they fit. Returns how many it looked at. */
const join = (into, one, other, width, height) => {
    let looks = 0;
    // Of two shapes the one that sets the size gives way to its slimmer or lower neighbour.
    for (let i = one.length - 1, j = other.length - 1; i >= 0 && j >= 0; looks++) {
        const a = one[i];
        const b = other[j];
        const h = a.height + b.height;
        if (h > height)
            break;
        const w = Math.max(a.width, b.width);
        const at = placeFor(into, w, h);
        if (at !== undefined)
            into.splice(at, 0, { width: w, height: h, parts: [a, b], beside: false });
        if (a.width === w)
            i--;
        if (b.width === w)
            j--;
    }
    for (let i = 0, j = 0; i < one.length && j < other.length; looks++) {
        const a = one[i];
        const b = other[j];
        const w = a.width + b.width;
        if (w > width)
            break;
        const h = Math.max(a.height, b.height);
        const at = placeFor(into, w, h);
        if (at !== undefined)
            into.splice(at, 0, { width: w, height: h, parts: [a, b], beside: true });
        if (a.height === h)
            i++;
        if (b.height === h)
            j++;
    }
    return looks;
};
const placed = ({ lot = 0, turned = false, parts, beside }, x = 0, y = 0) => {
    if (!parts)
        return [{ lot, turned, x, y, across: 1, down: 1 }];
    const [a, b] = parts;
    return [...placed(a, x, y), ...(beside ? placed(b, x + a.width, y) : placed(b, x, y + a.height))];
};
const sheetsOf = ({ shapes, parts }) => {
    const shape = shapes.at(-1);
    return shape
        ? [{ bands: [{ y: 0, height: shape.height, times: 1, blocks: placed(shape) }], times: 1 }]
        : parts.flatMap(sheetsOf);
};
/** Every group of the pieces, from the empty one to all of them, still without shapes. */
const everyGroup = (kinds, counts) => Array.from({ length: counts.reduce((all, count) => all * (count + 1), 1) }, (_, at) => {
    const own = counts.map((count) => {
        const digit = at % (count + 1);
        at = (at - digit) / (count + 1);
        return digit;
    });
    const area = own.reduce((all, count, i) => all + count * kinds[i].width * kinds[i].height, 0);
    return { counts: own, area, shapes: [], sheets: Infinity };
});
/**
 * The layout of a few pieces that uses least. It tries every way: each group of pieces is one piece, or two groups with a cut
 * between them. Undefined if that would take too long.
 *
 * @param height of a sheet; cloth bought by length has none.
 * @param used by a layout that we know. Only a layout that uses less is returned.
 * @param done is the progress that it yields every few milliseconds.
 */
function* leastOfFew(lots, width, height, used, done) {
    /** Lots of one piece are one kind. */
    const kinds = lots.filter(({ piece }, i) => lots[i - 1]?.piece !== piece);
    const counts = kinds.map(({ piece }) => lots.reduce((all, lot) => all + (lot.piece === piece ? lot.count : 0), 0));
    if (counts.reduce((all, count) => (all * (count + 1) * (count + 2)) / 2, 1) > MOST_WAYS)
        return undefined;
    const groups = everyGroup(kinds, counts);
    const tall = height ?? used - 1;
    const onePiece = (at) => {
        const { width: w, height: h, turn } = kinds[at];
        const lot = lots.indexOf(kinds[at]);
        const ways = [
            { width: w, height: h, lot, turned: false },
            { width: h, height: w, lot, turned: true },
        ];
        return ways.filter(({ height }, i) => height <= tall && (!i || turn)).sort((a, b) => a.width - b.width);
    };
    let effort = 0;
    let shown = 0;
    for (const [at, group] of groups.entries()) {
        const { counts: own, shapes } = group;
        if (own.reduce((all, count) => all + count, 0) === 1)
            shapes.push(...onePiece(own.indexOf(1)));
        const fits = group.area <= width * tall;
        const pairs = [];
        for (let one = 1; 2 * one <= at; one++)
            if (groups[one].counts.every((count, i) => count <= own[i]))
                pairs.push([groups[one], groups[at - one]]);
        effort += at / 8;
        for (const [a, b] of pairs) {
            if (fits)
                effort += join(shapes, a.shapes, b.shapes, width, tall);
            if (effort > EFFORT)
                return undefined;
            if (effort - shown > SLICE) {
                shown = effort;
                yield done;
            }
        }
        if (shapes.length)
            group.sheets = 1;
        else
            for (const parts of pairs) {
                const sheets = parts[0].sheets + parts[1].sheets;
                if (sheets < group.sheets)
                    Object.assign(group, { sheets, parts });
            }
    }
    const all = groups.at(-1);
    const least = height ? all.sheets : (all.shapes.at(-1)?.height ?? used);
    return { sheets: least < used ? sheetsOf(all) : [], used: least, unplaced: 0 };
}

export { leastOfFew };
