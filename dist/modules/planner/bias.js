import { wholeDown, leastWhole, ZERO, rootDown, ONE } from '../measure/exact.js';

const squared = (value) => value.mul(value);
/** What is left of a side after a seam has taken its two allowances. */
const sewn = (side, seam) => side.sub(seam.mul(2));
/**
 * The fewest equal squares, none wider than `widest`, whose whole rounds reach the length. Undefined if not even the widest
 * holds a round. A square of side a is cut on its diagonal and sewn up as a tube by two seams: with x = a − 2 seams the
 * tube's bias edges are x ÷ √2 apart and a round is x × √2 long. It compares squares, so no root is ever rounded.
 */
const biasSquares = ({ length, strip, seam, join, unit }, widest) => {
    const side = (units) => sewn(unit.mul(units), seam);
    const roundsOf = (units) => side(units).gt(ZERO) ? wholeDown(rootDown(squared(side(units).div(strip)).div(2), ONE)) : 0;
    const lengthSquared = (count, units) => squared(side(units).mul(count).mul(roundsOf(units))).mul(2);
    const reaches = (count, units) => lengthSquared(count, units).gte(squared(length.add(join.mul(count - 1))));
    const most = wholeDown(widest.div(unit));
    if (!roundsOf(most))
        return undefined;
    const count = leastWhole((count) => reaches(count, most));
    const units = leastWhole((units) => reaches(count, units));
    return {
        side: unit.mul(units),
        count,
        rounds: roundsOf(units),
        lengthSquared: lengthSquared(count, units),
    };
};

export { biasSquares };
