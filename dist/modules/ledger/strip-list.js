import { sayings } from '../measure/message.js';

const say = sayings();
/** The strips to cut for each fabric or part, and what comes from each. Equal strips share a row. One that is all of its cloth is not cut as a strip. */
const stripList = (plans, head, caption = say('stripsFromTop'), gives = 'gives') => ({
    caption,
    toCut: true,
    head: [head, say('stripsHead'), say('stripWidthHead'), say('givesHead')],
    rows: plans.flatMap(({ of, strips }) => alikeIn(strips, gives).map((strip) => [
        of,
        ...(strips.length === 1 && strip.asDrawn ? ['', ''] : [strip.count, strip.height]),
        say(gives, { gives: strip.gives, asDrawn: strip.asDrawn }),
    ])),
});
/** Puts strips of one height together if they give the same pieces. */
const alikeIn = (strips, says) => {
    const pieces = new Map();
    const alike = new Map();
    for (const strip of strips) {
        for (const { piece } of strip.gives)
            if (!pieces.has(piece))
                pieces.set(piece, pieces.size);
        const given = strip.gives.map(({ piece, count, size }) => [
            ...[pieces.get(piece), count],
            ...(says === 'givesSizes' && size ? [size.width.toFraction(), size.length.toFraction()] : []),
        ]);
        const key = [strip.height.toFraction(), strip.asDrawn, ...given].join();
        const before = alike.get(key)?.count ?? 0;
        alike.set(key, { ...strip, count: before + strip.count });
    }
    return [...alike.values()];
};

export { stripList };
