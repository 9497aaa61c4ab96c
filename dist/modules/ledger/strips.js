import { sayings } from '../measure/message.js';
import { everyPiece } from '../planner/plan.js';
import { shortFirst } from './quilt.js';
import { total, count, inches } from './quantity.js';

const sayOfLayout = sayings();
/** The most pieces that a drawing shows one by one. */
const MOST_DRAWN = 1500;
/** The size of a piece of this strip. */
const sizeIn = ({ placed }, of) => {
    const spot = placed.find(({ piece }) => piece === of);
    return spot && shortFirst({ width: spot.width, length: spot.height });
};
/** The strips of a plan, from the top of the cloth. `names` are the names of its pieces. */
const stripsOf = ({ sheets }, names) => sheets.flatMap(({ times, strips }) => strips.map((strip) => ({
    count: strip.times * times,
    height: strip.height,
    gives: strip.cuts.flatMap(({ piece, count }) => {
        const name = names[piece];
        return name ? { piece: name, count, size: sizeIn(strip, piece) } : [];
    }),
    asDrawn: strip.placed.some(({ y }) => y.gt(strip.y)),
})));
/** The height of all strips together, as a formula with equal heights added up: `8 × 2 1/2 + 1 × 12 1/2`. */
const stacked = (strips) => {
    const heights = new Map();
    for (const { count, height } of strips) {
        const key = height.toFraction();
        heights.set(key, { height, times: (heights.get(key)?.times ?? 0) + count });
    }
    return total([...heights.values()].map(({ height, times }) => count(times).times(inches(height))));
};
/** A plan's strips, and where each piece lies. */
const laidOut = (plan, { width, height = plan.length }, names, triangles = []) => ({
    strips: stripsOf(plan, names),
    layout: everyPiece(plan, MOST_DRAWN).flatMap(({ piece, sheet, x, y, width, height }) => {
        const name = names[piece];
        const each = triangles[piece] ?? 1;
        return name ? { x, y, width, height, piece: name, sheet, triangles: each > 1 ? each : undefined } : [];
    }),
    width,
    height,
});

export { laidOut, sayOfLayout, stacked, stripsOf };
