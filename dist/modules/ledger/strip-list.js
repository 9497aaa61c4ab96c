import { sayings } from '../measure/message.js';

const say = sayings();
/** The strips to cut of each fabric or for each part, those cut alike in one row, and what comes from each. */
const stripList = (plans, head, caption = say('stripsFromTop')) => ({
    caption,
    toCut: true,
    head: [head, say('stripsHead'), say('stripWidthHead'), say('givesHead')],
    rows: plans.flatMap(({ of, strips }) => alikeIn(strips).map(({ count, height, gives }) => [of, count, height, say('gives', { gives })])),
});
/** Strips of one height that give the same, as one. */
const alikeIn = (strips) => {
    const pieces = new Map();
    const alike = new Map();
    for (const strip of strips) {
        for (const { piece } of strip.gives)
            if (!pieces.has(piece))
                pieces.set(piece, pieces.size);
        const given = strip.gives.map(({ piece, count }) => [pieces.get(piece), count]);
        const key = [strip.height.toFraction(), ...given].join();
        const before = alike.get(key)?.count ?? 0;
        alike.set(key, { ...strip, count: before + strip.count });
    }
    return [...alike.values()];
};

export { stripList };
