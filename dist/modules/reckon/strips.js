import { everyPiece } from '../cutting/plan.js';
import { exact } from '../measure/exact.js';
import { mixed } from '../measure/format.js';

/** Of a plan that cannot be cut as it says, which nobody may see. */
const UNSOUND = 'This layout did not pass its check and is not shown. Change a size a little, or plan it in parts.';
/** Pieces that a drawing shows one by one. */
const MOST_DRAWN = 1500;
/** A plan's strips from the top of the cloth, in words that anyone can read. */
const stripsOf = ({ sheets }, names) => sheets.flatMap(({ times, strips }) => strips.map((strip) => ({
    count: strip.times * times,
    height: mixed(strip.height),
    gives: strip.cuts.map(({ piece, count }) => ({ piece: names[piece], count })),
})));
/** Strips by their heights: `8 × 2 1/2 + 1 × 12 1/2`, and what becomes of their sum. */
const stacked = (strips, n, then = '') => {
    const heights = new Map();
    for (const { count, height } of strips)
        heights.set(height, (heights.get(height) ?? 0) + count);
    const all = [...heights].map(([height, count]) => `${count} × ${n(exact(height))}`).join(' + ');
    return then && heights.size > 1 ? `(${all})${then}` : all + then;
};
/** The same, and where each piece lies. */
const laidOut = (plan, { width, height = plan.length }, names, triangles = []) => ({
    strips: stripsOf(plan, names),
    layout: everyPiece(plan, MOST_DRAWN).map(({ x, y, width, height, piece, sheet }) => ({
        x,
        y,
        width,
        height,
        piece: names[piece],
        sheet,
        triangles: triangles[piece] > 1 ? triangles[piece] : undefined,
    })),
    width,
    height,
});

export { UNSOUND, laidOut, stacked, stripsOf };
