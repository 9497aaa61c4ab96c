import { gcd } from './grid.js';

/** Limit for thresholds × sizes. A usual list gets all its thresholds, a very long one gets a few. */
const EFFORT = 4000;
/** The ways that help: the size itself, sizes with a threshold, and how many fit beside each other. */
const weighings = (sizes, whole) => {
    const small = [...new Set([whole / 2, ...sizes])].filter((size) => 2 * size <= whole).sort((a, b) => b - a);
    const every = Math.ceil((small.length * sizes.length) / EFFORT);
    return [
        { weigh: (size) => size, most: whole },
        ...small
            .filter((_, i) => i % every === 0)
            .flatMap((least) => {
            const fit = Math.floor(whole / least);
            return [
                { weigh: (size) => (size > whole - least ? whole : size < least ? 0 : size), most: whole },
                {
                    weigh: (size) => 2 * size > whole
                        ? 2 * (fit - Math.floor((whole - size) / least))
                        : 2 * size === whole
                            ? fit
                            : 2 * Math.floor(size / least),
                    most: 2 * fit,
                },
            ];
        }),
    ];
};
/**
 * No plan can need less than this: a length of cloth, or a number of sheets if they have a height. Each piece counts as its weight
 * across times its weight down. If it may be turned, the lighter of its two directions counts.
 */
const clothBound = (pieces, width, height) => {
    const sizes = pieces.flatMap((piece) => [piece.width, piece.height]);
    const downs = height === undefined ? [{ weigh: (size) => size, most: 1 }] : weighings(sizes, height);
    const weighed = (ways) => ways.map(({ weigh, most }) => ({
        weights: pieces.map((piece) => [weigh(piece.width), weigh(piece.height)]),
        most,
    }));
    const down = weighed(downs);
    let bound = 0;
    for (const across of weighed(weighings(sizes, width)))
        for (const { weights, most } of down) {
            let load = 0;
            pieces.forEach(({ count, turn }, i) => {
                const [a, b] = across.weights[i];
                const [c, d] = weights[i];
                load += count * (turn ? Math.min(a * d, b * c) : a * d);
            });
            bound = Math.max(bound, Math.ceil(load / (across.most * most)));
        }
    if (height !== undefined)
        return bound;
    // A length of cloth is a sum of heights.
    const step = pieces.reduce((step, { width, height, turn }) => gcd(turn ? gcd(step, width) : step, height), 0);
    const tallest = Math.max(0, ...pieces.map(({ width, height, turn }) => (turn ? Math.min(width, height) : height)));
    return Math.max(tallest, Math.ceil(bound / (step || 1)) * step);
};

export { clothBound };
