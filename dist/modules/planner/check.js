const apart = (a, b) => a[0] >= b[1] || b[0] >= a[1] || a[2] >= b[3] || b[2] >= a[3];
/** Cuts boxes apart from edge to edge as far as possible, and returns the groups that no cut can part. */
const tangles = (boxes) => {
    const found = [];
    const heap = [boxes];
    for (let group = heap.pop(); group; group = heap.pop()) {
        if (group.length < 2)
            continue;
        let parts = [];
        for (const [from, to] of [
            [2, 3],
            [0, 1],
        ]) {
            parts = [];
            let edge = 0n;
            for (const box of group.sort((a, b) => (a[from] < b[from] ? -1 : a[from] > b[from] ? 1 : 0))) {
                if (!parts.length || box[from] >= edge)
                    parts.push([]);
                parts.at(-1).push(box);
                if (parts.at(-1).length === 1 || box[to] > edge)
                    edge = box[to];
            }
            if (parts.length > 1)
                break;
        }
        if (parts.length > 1)
            heap.push(...parts);
        else
            found.push(group);
    }
    return found;
};
/**
 * Checks a plan against the list. It looks only at where the pieces are, and uses none of the planner's code. Every piece has to
 * be there in its size, on the cloth, without overlap, and edge-to-edge cuts have to reach it.
 *
 * @returns what is wrong, or an empty list if the plan can be cut.
 */
const checkPlan = (pieces, cloth, { sheets, count, length }) => {
    const faults = [];
    const made = pieces.map(() => 0);
    const checkSize = ({ piece, turned, width, height, x, y }, strip) => {
        const asked = pieces[piece];
        if (!asked) {
            faults.push({ fault: 'extra', piece });
            return;
        }
        const [w, h] = turned ? [asked.height, asked.width] : [asked.width, asked.height];
        if (turned && !asked.turn)
            faults.push({ fault: 'turned', piece });
        if (!width.equals(w) || !height.equals(h))
            faults.push({ fault: 'size', piece });
        if (x.lt(0) || x.add(width).gt(cloth.width) || y.lt(strip.y) || y.add(height).gt(strip.bottom))
            faults.push({ fault: 'outside', piece });
    };
    const wrongTimes = (times) => !Number.isSafeInteger(times) || times < 1;
    let sheetCount = 0;
    for (const { times, strips, used } of sheets) {
        if (wrongTimes(times))
            faults.push({ fault: 'miscounted' });
        sheetCount += times;
        let end = strips[0]?.y.mul(0);
        for (const strip of strips.slice().sort((a, b) => a.y.compare(b.y))) {
            if (wrongTimes(strip.times))
                faults.push({ fault: 'miscounted' });
            if (strip.y.lt(end))
                faults.push({ fault: strip.y.lt(0) ? 'outside' : 'overlap' });
            end = strip.y.add(strip.height.mul(strip.times));
            const edges = { y: strip.y, bottom: strip.y.add(strip.height) };
            for (const spot of strip.placed) {
                checkSize(spot, edges);
                if (pieces[spot.piece])
                    made[spot.piece] += strip.times * times;
            }
            for (const tangle of tangles(boxesOf(strip.placed))) {
                const overlap = tangle.some((box, i) => tangle.some((other, j) => j > i && !apart(box, other)));
                faults.push({ fault: overlap ? 'overlap' : 'uncuttable' });
            }
        }
        if (end && cloth.height && end.gt(cloth.height))
            faults.push({ fault: 'outside' });
        if (end && !(used.equals(end) && (cloth.height ?? end).equals(length)))
            faults.push({ fault: 'miscounted' });
    }
    if (sheetCount !== count || (!cloth.height && count > 1))
        faults.push({ fault: 'miscounted' });
    pieces.forEach((asked, piece) => {
        if (made[piece] < asked.count)
            faults.push({ fault: 'missing', piece });
        if (made[piece] > asked.count)
            faults.push({ fault: 'extra', piece });
    });
    return faults;
};
/** Makes all places whole numbers, by one common denominator. */
function boxesOf(placed) {
    let denominator = 1n;
    const gcd = (a, b) => (b ? gcd(b, a % b) : a);
    for (const { x, y, width, height } of placed)
        for (const { d } of [x, y, width, height])
            denominator *= d / gcd(denominator, d);
    const whole = ({ s, n, d }) => s * n * (denominator / d);
    return placed.map(({ x, y, width, height }) => {
        const left = whole(x);
        const top = whole(y);
        return [left, left + whole(width), top, top + whole(height)];
    });
}
const passed = new WeakSet();
/** Whether a plan can be cut as it says. A plan that has passed is not checked again. */
const canBeCut = (pieces, cloth, plan) => {
    if (!passed.has(plan) && !checkPlan(pieces, cloth, plan).length)
        passed.add(plan);
    return passed.has(plan);
};

export { canBeCut, checkPlan };
