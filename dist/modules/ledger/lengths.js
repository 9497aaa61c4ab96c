import { exact, isExact } from '../measure/exact.js';
import { asTyped, ownUnits } from '../measure/format.js';
import { inUnit, parseLength, bothSides, placesOf, sameUnit, splitSize } from '../measure/parse.js';
import { initialOf, likeIn, say, textOf, optional } from './field.js';
import { refuse, unlessRefused } from './refusal.js';

/**
 * Reads a length of any size and sign. A number alone is in the page's units, as a number or as text. An exact number stays as it
 * is. Throws a `Refusal`.
 */
const readLength = (raw, style) => {
    if (isExact(raw))
        return raw;
    // A script may give a floating-point sum with a long tail, such as 0.1 + 0.2.
    const parsed = parseLength(Number.isFinite(raw) ? raw.toFixed(6) : textOf(raw), style);
    return parsed.ok ? parsed.value : refuse(parsed.problem);
};
/** The lengths in the code, such as limits and initial values. Each is read once. */
const ownLengths = new Map();
/** Reads a length from the code, which has its unit. */
const ownLength = (text) => {
    let length = ownLengths.get(text);
    if (!length)
        ownLengths.set(text, (length = readLength(text, { units: 'in' })));
    return length;
};
/** The trade's usual length, as it is where the page's own units are used. */
const usualLength = (usual, style) => ownLength(usual[ownUnits(style)]);
/** Nobody cuts anything smaller. */
const FINEST = exact(1, 64);
/** The longest example in the sentence about a text that is not a length. An input with a lower limit needs one of its own. */
const LONGEST_EXAMPLE = exact(53);
/** Reads a length for an input whose limit is below the lengths that the usual sentence has as examples. */
const readShort = (raw, style, field) => unlessRefused(() => readLength(raw, style), ({ problem }) => refuse(problem.code === 'notLength'
    ? say('notShortLength', { text: textOf(raw), like: likeIn(field, style) })
    : problem));
const readWithin = ({ zero, most = '1000 in', ...field }, raw, style, what) => {
    const initial = initialOf(field, style);
    // A 0 has no unit.
    const isInitial = initial && initial !== '0' && initial === raw;
    const limit = ownLength(most);
    const read = limit.lt(LONGEST_EXAMPLE) ? readShort : readLength;
    const value = isInitial ? ownLength(initial) : read(raw, style, field);
    if (value.gte(FINEST) && value.lte(limit))
        return value;
    if (zero && value.equals(0))
        return value;
    const like = likeIn(field, style);
    if (value.lt(0))
        refuse(say('negative', { what }));
    if (!zero && value.lt(FINEST))
        refuse(say(value.equals(0) ? 'noLength' : 'tooSmall', { what, like }));
    if (value.gt(limit))
        refuse(say('tooLarge', { what, most: limit, like }));
    return value;
};
const LENGTH_EXAMPLE = { in: ['58', '147 cm'], cm: ['147', '58 in'] };
const lengthField = ({ zero, most, ...about } = {}) => {
    const field = { example: LENGTH_EXAMPLE, ...about };
    const limits = { ...field, zero, most };
    return {
        kind: 'length',
        ...field,
        read: (raw, style, what) => readWithin(limits, raw, style, what),
        write: asTyped,
        marked: inUnit,
    };
};
/** Nobody makes a longer quilt. If somebody writes this many feet, they may mean inches. From memory. */
const LONGEST_SIDE = 144;
/** One side of a quilt. Both sides together are wrong here, and so are inches with the sign of feet. */
const sideField = (about = {}) => {
    const field = lengthField(about);
    return {
        ...field,
        read: (raw, style, what) => {
            const text = textOf(raw);
            const [side, other] = bothSides(text, style) ?? [];
            if (side && other)
                refuse(say('twoSides', { text, side, other }));
            const feet = /^([\p{N}\s.,/]+)['‘’′]\s*$/u.exec(text)?.[1]?.trim();
            const length = feet && readLength(text, style);
            if (length && length.gt(LONGEST_SIDE))
                refuse(say('feetForInches', { text, feet, length }));
            return field.read(raw, style, what);
        },
    };
};
/** The same for several lengths. One unit counts for all of them. */
const allInUnit = (text, unit) => inUnit(text, unit, true);
const LONGEST_LIST = 12;
/** Several lengths with commas between them. If each has its own cell, an empty place between two commas counts too. */
const lengthsField = ({ most, each, ...about }) => ({
    kind: 'lengths',
    each,
    ...about,
    read: (raw, style, what) => {
        const entries = entriesOf(raw, style, !!each);
        if (entries.length > LONGEST_LIST)
            refuse(say('tooManyEntries', { what, most: LONGEST_LIST }));
        return entries.map((entry, at) => {
            const called = each ? say('entry', { of: textOf(what), number: at + 1 }) : what;
            const field = { example: { in: ['2'], cm: ['5'] } };
            if (entry === '')
                refuse(say('missing', { what: called, like: likeIn(field, style) }));
            return unlessRefused(() => readWithin({ ...field, most }, entry, style, called), ({ problem }) => refuse(say('inList', { problem })));
        });
    },
    marked: allInUnit,
    write: (parts, style) => parts.map((part) => asTyped(part, style)).join(style.comma ? '; ' : ', '),
});
/** The same with a cell for each. There may be none. */
const lengthCellsField = (about = {}) => ({
    ...optional(lengthsField({ ...about, each: true })),
    each: true,
});
/** The entries of a written list. If each has a cell, empty ones stay. */
const entriesOf = (raw, style, each) => {
    // An array may have holes. They count as empty.
    if (Array.isArray(raw))
        return Array.from(raw);
    if (typeof raw === 'number')
        return [raw];
    const places = placesOf(textOf(raw), style.comma);
    const hasAny = places.some(Boolean);
    return places
        .filter((place) => place || (each && hasAny))
        .map((place, _, all) => {
        const last = all.at(-1);
        return place && last ? sameUnit(place, last) : place;
    });
};
/** Two sides: `60 x 80`. */
const sizeField = (about) => ({
    kind: 'size',
    ...about,
    read: (raw, style, what) => {
        const [a, b] = splitSize(textOf(raw)) ?? refuse(say('notSize', { text: textOf(raw) }));
        const side = (text) => readWithin({ example: { in: ['60'], cm: ['150'] } }, text, style, what);
        return [side(a), side(b)];
    },
    marked: allInUnit,
    write: (sides, style) => sides.map((side) => asTyped(side, style)).join(' x '),
});

export { LONGEST_LIST, allInUnit, lengthCellsField, lengthField, lengthsField, ownLength, readLength, sideField, sizeField, usualLength };
