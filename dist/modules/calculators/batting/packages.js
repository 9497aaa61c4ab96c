import { textOf, readField, isBlank } from '../../ledger/field.js';
import { moneyField } from '../../ledger/kinds.js';
import { ownLength, lengthField } from '../../ledger/lengths.js';
import { refuse, unlessRefused } from '../../ledger/refusal.js';
import { ownUnits } from '../../measure/format.js';
import { sayings } from '../../measure/message.js';
import { inUnit, splitSize, parseLength } from '../../measure/parse.js';
import { PACKAGES } from '../../trade/batting.js';

const say = sayings();
const CRIB = 'crib';
/** The sizes that most shops have, where people measure in these units. */
const usualPackages = (style) => PACKAGES[ownUnits(style)].map(({ name, width, length }) => ({
    name: say('usualPackage', { size: name }),
    isForCrib: name === CRIB,
    width: ownLength(width),
    length: ownLength(length),
}));
const MOST_PACKAGES = 50;
const LONGEST_ENTRY = 120;
/** The words of an entry before its size, and the size. Undefined if there is no size. */
const partsOf = (before, style) => {
    const words = before.trim().split(/\s+/);
    for (let at = 0; at < words.length; at += 1) {
        const size = words.slice(at).join(' ');
        const sides = splitSize(size);
        if (sides?.every((side) => parseLength(side, style).ok))
            return { name: words.slice(0, at).join(' '), size, sides };
    }
    return undefined;
};
/** Reads `large 90 x 100 @ 29`. The name before the size may be left out. */
const readPackage = (entry, style) => {
    const [before = '', price, ...more] = entry.split('@');
    const parts = entry.length > LONGEST_ENTRY ? undefined : partsOf(before, style);
    if (!parts || more.length || price?.trim() === '')
        return refuse(say('notPackage', { text: entry }));
    const name = parts.name.replace(/[\s:,–—-]+$/, '');
    const [width, length] = parts.sides;
    const side = lengthField();
    return unlessRefused(() => ({
        name,
        isForCrib: name === CRIB,
        width: side.read(width, style, say('packageWidth')),
        length: side.read(length, style, say('packageLength')),
        price: readField(moneyField(), price, style, say('packagePrice')),
        priced: price?.trim(),
    }), ({ problem }) => refuse(say('inPackage', { text: entry, problem })));
};
/** A list as text, as {@link readPackages} reads it. */
const writePackages = (raw) => {
    const write = (entry) => {
        if (Object(entry) !== entry)
            return textOf(entry);
        const { name, width, length, price } = entry;
        // Without the colon, a name that ends in a number would run into the width.
        return `${name ? `${textOf(name)}: ` : ''}${textOf(width)} x ${textOf(length)}${isBlank(price) ? '' : ` @ ${textOf(price)}`}`;
    };
    return Array.isArray(raw) ? raw.map(write).join('; ') : textOf(raw);
};
/**
 * Reads a list of packages: text with semicolons between (`small 40 x 50 @ 12.50; large 90 x 100 @ 29`), or an array of
 * such texts or of objects with `name`, `width`, `length` and perhaps `price`. Throws a `Refusal` that names the
 * entry it cannot read.
 */
const readPackages = (raw, style) => {
    const entries = writePackages(raw)
        .split(';')
        .map((entry) => entry.trim())
        .filter(Boolean);
    if (!entries.length || entries.length > MOST_PACKAGES)
        refuse(say('packageCount', { most: MOST_PACKAGES }));
    return entries.map((entry) => readPackage(entry, style));
};
/** Adds this unit to every size in the list that has none. */
const packagesInUnit = (list, unit) => list
    .split(';')
    .map((entry) => {
    const [before = '', ...price] = entry.split('@');
    const parts = before.length > LONGEST_ENTRY ? undefined : partsOf(before, { units: unit, comma: true });
    if (!parts)
        return entry.trim();
    const { name, size } = parts;
    return [[name, inUnit(size, unit, true)].filter(Boolean).join(' '), ...price].join(' @');
})
    .join('; ');
/** A shop's own list. */
const packagesField = {
    kind: 'own',
    more: true,
    read: readPackages,
    write: (_packages, _style, raw) => writePackages(raw),
    marked: packagesInUnit,
};

export { packagesField, usualPackages };
