import { exact } from '../measure/exact.js';
import { length, asTyped, mixed } from '../measure/format.js';
import { bothSides, quoted, inUnit, parseLength, placesOf, sameUnit, splitSize } from '../measure/parse.js';
import { parseStep } from '../measure/shop.js';
import { withoutCode } from './money.js';

/** A value a person could not have meant; the message is a sentence for her. */
class Refusal extends Error {
    constructor(message, input = '') {
        super(message);
        this.input = input;
    }
}
/** Throws a {@link Refusal}; which input it is about may be said further up. */
const refuse = (message, input) => {
    throw new Refusal(message, input);
};
/** Does this; what is refused in it goes to `otherwise`, and anything else that is thrown flies on. */
const unlessRefused = (work, otherwise) => {
    try {
        return work();
    }
    catch (refusal) {
        if (!(refusal instanceof Refusal))
            throw refusal;
        return otherwise(refusal);
    }
};
/** What stands in a field when nothing is written there. */
const initialOf = ({ initial }, { units }) => typeof initial === 'object' ? initial[units] : initial;
const isBlank = (raw) => raw === undefined || raw === null || raw === '';
/** What was written, as text; nothing for what nobody writes, such as an object. */
const textOf = (raw) => {
    const one = (part) => /^(string|bigint|boolean)$/.test(typeof part) || Number.isFinite(part) ? `${part}` : '';
    return Array.isArray(raw) ? raw.map(one).join(', ') : one(raw);
};
/** What works in a field, after what is wrong. */
const like = (field, style) => `Write it like ${initialOf(field, style) ?? field.example}.`;
/** That something has to be written here, and an example. */
const missing = (field, style) => `${field.label} is missing. ${like(field, style)}`;
/** Reads one field. Throws only a {@link Refusal}. */
const readField = (field, raw, style) => {
    const written = raw ?? initialOf(field, style);
    if (!isBlank(written) || field.kind === 'flag')
        return field.read(written, style);
    return field.optional ? undefined : refuse(missing(field, style));
};
/** The same input, which may also be left out. */
const optional = (field, about = {}) => ({
    ...field,
    ...about,
    optional: true,
});
/** Reads a length of any size and sign; a bare number is in the page's units, be it a number or text. Throws a {@link Refusal}. */
const readLength = (raw, style) => {
    // What a page reckons in floating point may have a long tail: 0.1 + 0.2.
    const parsed = parseLength(Number.isFinite(raw) ? raw.toFixed(6) : textOf(raw), style);
    return parsed.ok ? parsed.value : refuse(parsed.message);
};
/** Nobody cuts anything smaller. */
const FINEST = exact(1, 64);
const readWithin = ({ zero, most = '1000 in', ...field }) => (raw, style) => {
    const { label } = field;
    const value = readLength(raw, style);
    const limit = readLength(most, style);
    if (value.lt(0))
        refuse(`${label} cannot be less than 0. Write it without the minus sign.`);
    if (!zero && value.lt(FINEST))
        refuse(`${label} has to be ${value.equals(0) ? 'more than 0' : 'at least 1/64 in'}. ${like(field, style)}`);
    if (value.gt(limit))
        refuse(`${label} can be at most ${length(limit, style)} here. Is the unit right? ${like(field, style)}`);
    return value;
};
const LENGTH_EXAMPLE = '58 or 147 cm';
const lengthField = (label, { zero, most, ...about } = {}) => {
    const field = { label, example: LENGTH_EXAMPLE, ...about };
    return {
        kind: 'length',
        ...field,
        read: readWithin({ ...field, zero, most }),
        write: asTyped,
        marked: inUnit,
    };
};
/** Nobody makes a quilt longer than this; who writes so many feet may mean inches. From memory. */
const LONGEST_SIDE = 144;
/** One side of a quilt: not both of them, and no inches with the sign of feet. */
const sideField = (label, about = {}) => {
    const field = lengthField(label, about);
    return {
        ...field,
        read: (raw, style) => {
            const text = textOf(raw);
            const [side, other] = bothSides(text, style) ?? [];
            if (side && other)
                refuse(`${quoted(text)} is two sides. Write one here, like ${side}, and ${other} as the other.`);
            const feet = /^([\p{N}\s.,/]+)['‘’′]\s*$/u.exec(text)?.[1]?.trim();
            const value = feet && readLength(text, style);
            if (value && value.gt(LONGEST_SIDE))
                refuse(`${quoted(text)} is ${feet} feet, ${length(value, style)}. Did you mean ${feet} in? Write ${feet} in, or ${feet} ft.`);
            return field.read(raw, style);
        },
    };
};
/** The same for several lengths: one unit holds for all of them. */
const allInUnit = (text, unit) => inUnit(text, unit, true);
const LONGEST_LIST = 12;
const SEVERAL = 'Put commas between several, like 2, 4 1/2.';
/** What an entry of a list is called: `Border 2, width`. */
const entryLabel = (each, at) => `${each} ${at + 1}, width`;
/** Several lengths, with commas between; where each has a cell of its own, a place between two commas is not left out. */
const lengthsField = (label, { most, each, ...about }) => ({
    kind: 'lengths',
    label,
    each,
    ...about,
    read: (raw, style) => {
        // A hole in a list is read too, as nothing.
        const places = Array.isArray(raw) || typeof raw === 'number' ? [] : placesOf(textOf(raw), style.comma);
        const hasAny = places.some(Boolean);
        const parts = Array.isArray(raw)
            ? [...raw]
            : typeof raw === 'number'
                ? [raw]
                : places
                    .filter((part) => part || (each && hasAny))
                    .map((part, _, all) => (part && all.at(-1) ? sameUnit(part, all.at(-1)) : part));
        if (parts.length > LONGEST_LIST)
            refuse(`${label}: at most ${LONGEST_LIST} can be reckoned at once. ${SEVERAL}`);
        return parts.map((part, at) => {
            const field = { label: each ? entryLabel(each, at) : label, example: '2' };
            if (part === '')
                refuse(`${field.label} is missing. ${like(field, style)}`);
            return unlessRefused(() => readWithin({ ...field, most })(part, style), ({ message }) => refuse(`${message} ${SEVERAL}`));
        });
    },
    marked: allInUnit,
    write: (parts, style) => parts.map((part) => asTyped(part, style)).join(style.comma ? '; ' : ', '),
});
/** Two sides: `60 x 80`. */
const sizeField = (label, about) => ({
    kind: 'size',
    label,
    ...about,
    read: (raw, style) => {
        const sides = splitSize(textOf(raw)) ?? refuse(`${quoted(textOf(raw))} is not a size. Write it like 60 x 80.`);
        return sides.map((side) => readWithin({ label, example: '60' })(side, style));
    },
    marked: allInUnit,
    write: (sides, style) => sides.map((side) => asTyped(side, style)).join(' x '),
});
/** A number that is not a length; `without` takes a word off it. A sign stands before it or behind: 12€50 is not 1250. */
const readNumber = (raw, label, least, most, example, without = (text) => text) => {
    const text = textOf(raw);
    const bare = without(text)
        .trim()
        .replace(/^[%\p{Sc}]|[%\p{Sc}]$/gu, '')
        .trim();
    const parsed = parseLength(bare, { units: 'in', comma: /,\d{1,2}$/.test(bare) });
    // A mark of feet or inches makes it a length, also where one stands for a thousand: 1'200.50.
    if (!parsed.ok || /[^\P{L}x]|["'‘’′“”″]/iu.test(bare))
        return refuse(`${quoted(text)} is not a number. Write it like ${example}.`);
    if (parsed.value.lt(least) || parsed.value.gt(most))
        refuse(`${label} is between ${least} and ${most}. Write it like ${example}.`);
    return parsed.value;
};
const countField = (label, most, about = {}) => ({
    kind: 'count',
    label,
    example: '4',
    ...about,
    read: (raw) => {
        const value = readNumber(raw, label, 1, most, '4');
        return value.d === 1n ? value.valueOf() : refuse(`${label} is a whole number. Write it like 4.`);
    },
});
/** A share, written in percent. */
const percentField = (label, about) => ({
    kind: 'percent',
    label,
    ...about,
    read: (raw) => {
        const percent = readNumber(raw, label, 0, 50, '3');
        // Others write 3 % as 0.03: taken as it stands, it would buy too little.
        if (percent.gt(0) && percent.lt(exact(1, 2)))
            refuse(`${label}: “${textOf(raw).trim()}” would be less than 1/2 %. Write it like 3, for 3 %.`);
        return percent.div(100);
    },
    write: (share) => `${mixed(share.mul(100))} %`,
});
const moneyField = (label) => optional({
    kind: 'money',
    label,
    more: true,
    read: (raw) => readNumber(raw, label, 0, 1e6, '12.50 or 1250', withoutCode),
});
const flagField = (label, about = {}) => ({
    kind: 'flag',
    label,
    ...about,
    read: (raw) => raw !== undefined && raw !== null && !/^(false|no|0)$/.test(textOf(raw)),
    write: (value) => (value ? 'yes' : 'no'),
});
const oneOf = (raw, options) => {
    const value = textOf(raw).trim().toLowerCase().replace(/\s+/g, '-');
    return Object.hasOwn(options, value)
        ? value
        : refuse(`${quoted(textOf(raw))} is not one of the choices. Write ${Object.keys(options).join(' or ')}.`);
};
/** One of several; the first stands there when nothing is written. */
const choiceField = (label, options) => ({
    kind: 'text',
    label,
    options,
    initial: Object.keys(options)[0],
    read: (raw) => oneOf(raw, options),
    write: (value) => value,
});
/** One of several for all, or more with commas between. */
const choicesField = (label, options) => ({
    ...choiceField(label, options),
    read: (raw) => textOf(raw)
        .split(/[,;]/)
        .map((part) => oneOf(part, options)),
    write: textOf,
});
/** What a shop cuts cloth by. */
const stepField = (label, about) => ({
    kind: 'step',
    label,
    ...about,
    read: (raw, style) => {
        const parsed = parseStep(textOf(raw), style);
        return parsed.ok ? parsed.value : refuse(parsed.message);
    },
    marked: inUnit,
});
/** ISO 4217. */
const currencyField = (label) => optional({
    kind: 'text',
    label,
    more: true,
    read: (raw) => {
        const text = textOf(raw).trim();
        return /^[a-z]{3}$/i.test(text)
            ? text
            : refuse(`${quoted(text)} is not a code of three letters. Write it like EUR.`);
    },
    // A price may have named it.
    write: (code) => code,
});
/** A size, or the name of one that the shop sells: `18 x 20`, `fat-quarter`. */
const sheetField = (label, about) => optional({ kind: 'text', label, ...about, read: (raw) => textOf(raw).trim(), marked: allInUnit });

export { LONGEST_LIST, Refusal, choiceField, choicesField, countField, currencyField, entryLabel, flagField, initialOf, isBlank, lengthField, lengthsField, missing, moneyField, optional, percentField, readField, readLength, refuse, sheetField, sideField, sizeField, stepField, textOf, unlessRefused };
