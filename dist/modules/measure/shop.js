import { exact, nearestTo, least, upTo, downTo, sum } from './exact.js';
import { decimal, mixed } from './format.js';
import { parseLength, say } from './parse.js';
import { toUnit } from './units.js';

/** Reads a cutting step: `1/8 yd`, `1/4 yd`, `thirds` (eighths and thirds of a yard), `10 cm`. */
const parseStep = (text, reading) => {
    if (/^\s*thirds\s*$/i.test(text))
        return { ok: true, value: { sizes: [exact(9, 2), exact(12)], unit: 'yd' } };
    const parsed = parseLength(text, reading);
    if (!parsed.ok)
        return { ok: false, problem: say('notStep', { text }) };
    if (parsed.value.lt(exact(1, 8)) || parsed.value.gt(360))
        return { ok: false, problem: say('stepRange') };
    const isMetric = /m/i.test(text) || ((reading.bare ?? reading.units) === 'cm' && /\p{N}\s*$/u.test(text));
    return { ok: true, value: { sizes: [parsed.value], unit: isMetric ? 'm' : /y/i.test(text) ? 'yd' : 'in' } };
};
/** The least amount the shop cuts that is not below the need. */
const toStep = (inches, { sizes }) => least(...sizes.map((size) => upTo(inches, size)));
/** The next amount the shop cuts above this one. */
const stepAbove = (inches, { sizes }) => least(...sizes.map((size) => downTo(inches, size).add(size)));
/** We try every way to put this many needs into lengths. One more need doubles the number of ways. */
const MOST_TRIED = 8;
/**
 * The lengths to buy for these needs. Each length is a list of places in `needs`. Usually it is one length for all. If a shop cuts
 * by two sizes, one length of each may be less: 1/3 yd and 1/4 yd are less than one length of 5/8 yd. More than two never helps,
 * because two lengths of the same size can be one.
 */
const inLengths = (needs, step) => {
    const all = needs.map((_, at) => at);
    const [size, other] = step.sizes;
    if (!other)
        return [all];
    const costOf = (lengths) => sum(lengths.map((places) => toStep(sum(places.map((at) => needs[at])), step)));
    const isFirst = (need) => toStep(need, step).div(size).d === 1n;
    const ways = needs.length > MOST_TRIED
        ? [needs.map(isFirst)]
        : Array.from({ length: 2 ** (needs.length - 1) }, (_, way) => all.map((at) => !((way >> at) & 1)));
    let best = [all];
    let cost = costOf(best);
    for (const way of ways) {
        const lengths = [all.filter((at) => way[at]), all.filter((at) => !way[at])];
        const other = costOf(lengths);
        if (other.lt(cost))
            [best, cost] = [lengths, other];
    }
    return best.sort(([a], [b]) => a - b);
};
/** What a price is for: a yard, or a metre if the shop's step is metric. */
const toPriced = (inches, { unit }) => toUnit(inches, unit === 'm' ? 'm' : 'yd');
/** Money, rounded to the smallest coin of a currency with this many decimals. */
const toCoin = (value, decimals) => nearestTo(value, exact(1, 10 ** decimals));
/** Cloth as a bolt or a label says it, in the unit that gives the rounder number: `15 yd`, `13.5 m`. */
const soldLength = (inches, { units, comma }) => {
    const [yards, metres] = [toUnit(inches, 'yd'), toUnit(inches, 'm')];
    const inYards = 8n % yards.d === 0n;
    const inMetres = 100n % metres.d === 0n;
    if (units === 'cm' ? inMetres || !inYards : inMetres && !inYards)
        return `${decimal(metres, 4, comma)} m`;
    return `${inYards ? mixed(yards) : decimal(yards, 4, comma)} yd`;
};

export { inLengths, parseStep, soldLength, stepAbove, toCoin, toPriced, toStep };
