import { sum, exact, wholeDown, wholeUp } from '../measure/exact.js';
import { sayings } from '../measure/message.js';

const say = sayings();
const noPlan = (problem, piece) => ({ ok: false, problem, piece });
/** Steps per inch, fine enough for every mark of a ruler. */
const COARSE = 4096n;
/** The greatest common divisor. */
const gcd = (a, b) => b ? gcd(b, (a % b)) : a;
/** The grid on which all lengths are whole numbers, or 1/4096 in if that would need more than `finest` steps an inch. */
const gridFor = (lengths, finest) => {
    let steps = 1n;
    for (const { d } of lengths)
        if (steps <= finest)
            steps *= d / gcd(steps, d);
    const whole = steps <= finest;
    const perInch = exact(whole ? steps : COARSE);
    return {
        exact: whole,
        up: (length) => wholeUp(length.mul(perInch)),
        down: (length) => wholeDown(length.mul(perInch)),
        inches: (count) => exact(count).div(perInch),
    };
};
/** A search through more than this would take longer than one frame of a page. */
const MOST_SIZES = 1000;
const MOST_PIECES = 1_000_000;
/** Inches: some 16 miles of cloth. */
const LONGEST = 1_000_000;
/** Why these sizes and counts cannot be planned, or undefined if they can. */
const refuse = (cloth, pieces) => {
    const badSize = (size) => size.lte(0) ? say('sizeOfNothing') : size.gt(LONGEST) ? say('longerThanCloth') : undefined;
    const badCount = (count) => Number.isInteger(count) && count >= 0 ? undefined : say('wholeCount');
    for (const size of cloth) {
        const problem = badSize(size);
        if (problem)
            return noPlan(problem);
    }
    for (const [piece, { sizes, count }] of pieces.entries()) {
        const problem = badCount(count) ?? sizes.map(badSize).find(Boolean);
        if (problem)
            return noPlan(problem, piece);
    }
    if (pieces.length > MOST_SIZES)
        return noPlan(say('tooManySizes', { most: MOST_SIZES }));
    return sum(pieces.map(({ count }) => exact(count))).gt(MOST_PIECES)
        ? noPlan(say('tooManyPieces'))
        : undefined;
};

export { MOST_PIECES, gcd, gridFor, noPlan, refuse, say };
