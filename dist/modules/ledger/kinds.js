import { exact } from '../measure/exact.js';
import { mixed } from '../measure/format.js';
import { parseLength, inUnit } from '../measure/parse.js';
import { parseStep } from '../measure/shop.js';
import { withoutCode } from './currency.js';
import { say, textOf, optional, initialOf } from './field.js';
import { allInUnit } from './lengths.js';
import { refuse } from './refusal.js';

/** A number that is not a length. `bare` takes a word off it. A sign may be before or after it: 12€50 is not 1250. */
const readNumber = (raw, what, { least, most, like }, bare = (text) => text) => {
    const text = textOf(raw);
    const digits = bare(text)
        .trim()
        .replace(/^[%\p{Sc}]|[%\p{Sc}]$/gu, '')
        .trim();
    const parsed = parseLength(digits, { units: 'in', comma: /,\d{1,2}$/.test(digits) });
    // A mark of feet or inches makes it a length, even if the writer meant thousands: 1'200.50.
    if (!parsed.ok || /[^\P{L}x]|["'‘’′“”″]/iu.test(digits))
        return refuse(say('notNumber', { text, like }));
    if (parsed.value.lt(least) || parsed.value.gt(most))
        refuse(say('outOfRange', { what, least, most, like }));
    return parsed.value;
};
const countField = (most, about = {}) => ({
    kind: 'count',
    example: ['4'],
    ...about,
    read: (raw, _style, what) => {
        const value = readNumber(raw, what, { least: 1, most, like: ['4'] });
        return value.d === 1n ? value.valueOf() : refuse(say('notWhole', { what }));
    },
});
/** A share, written in percent. */
const percentField = (about) => ({
    kind: 'percent',
    ...about,
    read: (raw, _style, what) => {
        const percent = readNumber(raw, what, { least: 0, most: 50, like: ['3'] });
        // Some people write 3 % as 0.03. Taken as 0.03 %, it would buy too little.
        if (percent.gt(0) && percent.lt(exact(1, 2)))
            refuse(say('lessThanHalfPercent', { what, text: textOf(raw).trim() }));
        return percent.div(100);
    },
    write: (share) => `${mixed(share.mul(100))} %`,
});
const moneyField = () => optional({
    kind: 'money',
    more: true,
    read: (raw, _style, what) => readNumber(raw, what, { least: 0, most: 1e6, like: ['12.50', '1250'] }, withoutCode),
});
const flagField = (about = {}) => ({
    kind: 'flag',
    ...about,
    read: (raw) => raw !== undefined && raw !== null && !/^(false|no|0)$/.test(textOf(raw)),
    write: (value) => (value ? 'yes' : 'no'),
});
/** `named` are the choices that a sentence names if it is none of them. */
const oneOf = (raw, choices, of, named = choices) => {
    const text = textOf(raw);
    const value = text.trim().toLowerCase().replace(/\s+/g, '-');
    return choices.find((choice) => choice === value) ?? refuse(say('notChoice', { text, of, choices: named }));
};
/** A choice of one. The first counts if nobody chooses. */
const choiceField = (options, about = {}) => ({
    kind: 'choice',
    options,
    initial: options[0],
    ...about,
    read: (raw, { units }, what) => oneOf(raw, options, what, about.offered?.[units]),
    write: (value) => value,
});
/** One choice for all, or several with commas between them. */
const choicesField = (options) => ({
    kind: 'choices',
    options,
    initial: options[0],
    read: (raw, _style, what) => textOf(raw)
        .split(/[,;]/)
        .map((part) => oneOf(part, options, what)),
    write: textOf,
});
const readStep = (text, style) => {
    const parsed = parseStep(text, style);
    return parsed.ok ? parsed.value : refuse(parsed.problem);
};
/** The step by which a shop cuts cloth. */
const stepField = (about) => {
    /** What stands there at first names its unit, and is read once. */
    const steps = new Map();
    return {
        kind: 'step',
        ...about,
        read: (raw, style) => {
            const text = textOf(raw);
            if (text !== initialOf(about, style))
                return readStep(text, style);
            let step = steps.get(text);
            if (!step)
                steps.set(text, (step = readStep(text, style)));
            return step;
        },
        marked: inUnit,
    };
};
/** ISO 4217. */
const currencyField = () => optional({
    kind: 'text',
    more: true,
    read: (raw) => {
        const text = textOf(raw).trim();
        return /^[a-z]{3}$/i.test(text) ? text : refuse(say('notCurrency', { text }));
    },
    // A price may have named the currency.
    write: (code) => code,
});
/** A size, or the name of one that the shop sells: `18 x 20`, `fat-quarter`. */
const sheetField = () => optional({ kind: 'text', read: (raw) => textOf(raw).trim(), marked: allInUnit });

export { choiceField, choicesField, countField, currencyField, flagField, moneyField, percentField, sheetField, stepField };
