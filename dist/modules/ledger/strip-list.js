import { sayings } from '../measure/message.js';

const say = sayings();
/** The strips to cut for each fabric or part, and what comes from each. Equal strips share a row. */
const stripList = (plans, head, caption = say('stripsFromTop')) => ({
    caption,
    toCut: true,
    head: [head, say('stripsHead'), say('stripWidthHead'), say('givesHead')],
    rows: plans.flatMap(({ of, strips }) => alikeIn(strips).map(({ count, height, gives }) => [of, count, height, say('gives', { gives })])),
});
/** Puts strips of one height together if they give the same pieces. */
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
