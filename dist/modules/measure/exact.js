import Fraction from 'fraction.js';

/** A fraction of two whole numbers; throws if either is not whole. */
const over = (top, bottom) => new Fraction(top, bottom);
/** `52`, `.5`, `105/2`, `52 1/2`. The library could read these too, but we drop that part of it: see tests/tools/slim-fraction.mjs. */
const read = (text) => {
    if (/^\d+$/.test(text))
        return over(BigInt(text));
    if (text.startsWith('-'))
        return read(text.slice(1)).neg();
    const [first = '', second] = text.split(' ');
    if (second)
        return read(first).add(read(second));
    const [top = '', bottom = '1'] = first.split('/');
    const [whole, places = ''] = top.split('.');
    return over(BigInt(whole + places), BigInt(bottom) * 10n ** BigInt(places.length));
};
/** What an exact number can be made from. A string is a decimal or a fraction ("52.5", "105/2", "52 1/2"). */
const exact = (value, divisor) => typeof value === 'string' ||
    (typeof value === 'number' && divisor === undefined && !Number.isInteger(value))
    ? read(`${value}`)
    : over(value, divisor);
/** Knows exact numbers from another copy of the script too: a page may load two. */
const isExact = (value) => typeof value === 'object' &&
    value !== null &&
    'd' in value &&
    typeof value.d === 'bigint' &&
    // Somebody else's object may have such a part by chance.
    'n' in value &&
    typeof value.n === 'bigint' &&
    'toFraction' in value &&
    typeof value.toFraction === 'function' &&
    'gte' in value &&
    typeof value.gte === 'function';
const ZERO = exact(0);
const ONE = exact(1);
/** Takes one value or more. */
const least = (...values) => values.reduce((a, b) => (b.lt(a) ? b : a));
const most = (...values) => values.reduce((a, b) => (b.gt(a) ? b : a));
const sum = (values) => values.reduce((a, b) => a.add(b), ZERO);
/** The least whole number that is not below the value. */
const wholeUp = (value) => value.ceil().valueOf();
/** The greatest whole number that is not above the value. */
const wholeDown = (value) => value.floor().valueOf();
const upTo = (value, step) => value.div(step).ceil().mul(step);
const downTo = (value, step) => value.div(step).floor().mul(step);
const nearestTo = (value, step) => value.div(step).round().mul(step);
/**
 * Nobody can cut a difference smaller than this. A published chart keeps a mark for 0.0024 in (16 in block) and goes on to
 * the next for 0.0098 in (13 in block): "Setting triangles", lukas.is-a-geek.org/tani/chart.htm.
 */
const CUTTABLE = exact(1, 128);
/** A size to cut, on a ruler mark: rounded up, unless it is above a mark by less than anybody can cut. */
const toMark = (value, mark) => {
    const below = downTo(value, mark);
    return value.sub(below).lt(CUTTABLE) ? below : below.add(mark);
};
/** The least whole number from `from` on that fits. If one fits, every larger one has to fit too. */
const leastWhole = (fits, from = 1) => {
    let [low, high] = [from - 1, from];
    for (let stride = 1; !fits(high); stride *= 2)
        [low, high] = [high, high + stride];
    while (high - low > 1) {
        const middle = Math.floor((low + high) / 2);
        if (fits(middle))
            high = middle;
        else
            low = middle;
    }
    return high;
};
/** The greatest multiple of a step whose square is not above the value. */
const rootDown = (value, step) => {
    const above = (count) => step.mul(count + 1);
    return step.mul(leastWhole((count) => above(count).mul(above(count)).gt(value), 0));
};
/** The least whole number whose square is not below the value. */
const wholeRootUp = (value) => {
    // Floating point is off by far less than 1 here, so the floor is not yet too much.
    let root = BigInt(Math.floor(Math.sqrt(Number(value))));
    while (root * root < value)
        root += 1n;
    return root;
};
/**
 * A square root that is never short: the least multiple of 1/1,000,000 whose square is not below the value. It has to be this
 * fine for a 6 3/8 in block on point: without it, its corner square would go up one more mark of the ruler. If the root is a
 * whole number or a fraction, it is exact. (A length in centimetres is a fraction of an inch.)
 */
const rootUp = (value) => {
    const [top, bottom] = [wholeRootUp(value.n), wholeRootUp(value.d)];
    if (top * top === value.n && bottom * bottom === value.d)
        return exact(top, bottom);
    return exact(wholeRootUp(value.mul(10n ** 12n).ceil().n), 1000000n);
};

export { ONE, ZERO, downTo, exact, isExact, least, leastWhole, most, nearestTo, rootDown, rootUp, sum, toMark, upTo, wholeDown, wholeUp };
