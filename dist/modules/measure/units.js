import { exact } from './exact.js';

/** The units that somebody wrote, or `otherwise` if it is neither of the two. */
const unitsOr = (written, otherwise) => written === 'cm' || written === 'in' ? written : otherwise;
/** Inches in one of each unit. International yard and pound agreement, 1959: 1 yd = 0.9144 m exactly. */
const INCHES = {
    in: exact(1),
    ft: exact(12),
    yd: exact(36),
    mm: exact(5, 127),
    cm: exact(50, 127),
    m: exact(5000, 127),
};
const toUnit = (inches, unit) => inches.div(INCHES[unit]);
const fromUnit = (amount, unit) => amount.mul(INCHES[unit]);
/** How a language writes numbers, by the language and the options. We keep it, because the browser takes long to find out. */
const known = new Map();
/** A page needs few of them. The limit keeps memory small if somebody tries many. */
const MOST_KNOWN = 100;
/** How this language writes numbers. Throws if there is no such language or currency. */
const numbersIn = (lang, options) => {
    const key = JSON.stringify([lang, options]);
    const found = known.get(key);
    if (found)
        return found;
    const made = new Intl.NumberFormat(lang, options);
    if (known.size >= MOST_KNOWN)
        known.clear();
    known.set(key, made);
    return made;
};
/** Kinds of English that write a point. The first question about a language takes a browser long, and all would wait for the answer. */
const POINT = /^en(-(US|GB|AU|CA|IE|NZ))?$/;
/** Whether a language writes decimals with a comma, for each one that we asked about. */
const commas = new Map();
const findComma = (lang) => {
    try {
        return numbersIn(lang).format(1.5).includes(',');
    }
    catch {
        return false;
    }
};
/** Whether a language writes decimals with a comma ("52,5"). An unknown language does not. */
const writesComma = (lang) => {
    const tag = lang || 'en';
    if (POINT.test(tag))
        return false;
    const known = commas.get(tag);
    if (known !== undefined)
        return known;
    if (commas.size >= MOST_KNOWN)
        commas.clear();
    const comma = findComma(tag);
    commas.set(tag, comma);
    return comma;
};

export { INCHES, fromUnit, numbersIn, toUnit, unitsOr, writesComma };
