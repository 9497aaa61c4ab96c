import { exact } from '../../measure/exact.js';

const FLIGHTS = ['up', 'down', 'left', 'right'];
/** A fabric's letter: `A`, `b`, `A1`, or the number that a pattern gives it. */
const LETTER = String.raw `(\p{L}\p{M}*\d{0,2}|\d{1,2})`;
const pattern = (written) => new RegExp(`^${written.replaceAll('L', LETTER)}$`, 'iu');
/** The ways to write a patch, each with what it is. */
const WRITTEN = [
    [pattern('L'), { kind: 'plain' }],
    [pattern('L/L'), { kind: 'half', seam: 'rising' }],
    [pattern(String.raw `L\\L`), { kind: 'half', seam: 'falling' }],
    [pattern('L/L/L/L'), { kind: 'quarter' }],
    [pattern('L L L'), { kind: 'goose', flies: 'up' }],
    [pattern('L in L'), { kind: 'inside' }],
];
/** What a patch is, as it is written. Undefined if nobody can read it. */
const patchOf = (written) => {
    for (const [pattern, shape] of WRITTEN) {
        const [, ...letters] = pattern.exec(written) ?? [];
        if (letters.length)
            return { ...shape, letters };
    }
    return undefined;
};
const HALF = exact(1, 2);
const QUARTER = exact(1, 4);
/** What part of a patch each of its letters covers. */
const PARTS = {
    plain: [exact(1)],
    half: [HALF, HALF],
    quarter: [QUARTER, QUARTER, QUARTER, QUARTER],
    goose: [QUARTER, HALF, QUARTER],
    inside: [HALF, HALF],
};
const partsOf = ({ kind }) => PARTS[kind];
/** How many pieces of cloth a patch is sewn from. */
const PIECES = { plain: 1, half: 2, quarter: 4, goose: 3, inside: 5 };

export { FLIGHTS, PIECES, partsOf, patchOf };
