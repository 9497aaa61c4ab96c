import { inUnit, splitSize, parseLength, quoted } from '../measure/parse.js';
import { refuse, textOf, unlessRefused, readField, moneyField, lengthField, isBlank } from './fields.js';

const EXAMPLE = 'Write it like large 90 x 100 @ 29.';
const MOST_PACKAGES = 50;
const LONGEST_ENTRY = 120;
/** The words of an entry before its size, and the size; nothing where there is none. */
const partsOf = (before, style) => {
    const words = before.trim().split(/\s+/);
    const sizeFrom = (at) => words.slice(at).join(' ');
    const at = words.findIndex((_, at) => splitSize(sizeFrom(at))?.every((side) => parseLength(side, style).ok));
    return at < 0 ? undefined : [words.slice(0, at).join(' '), sizeFrom(at)];
};
/** `large 90 x 100 @ 29`: the name is what stands before the size, and may be left out. */
const readPackage = (entry, style) => {
    const [before = '', price, ...more] = entry.split('@');
    const parts = entry.length > LONGEST_ENTRY ? undefined : partsOf(before, style);
    if (!parts || more.length || price?.trim() === '')
        return refuse(`${quoted(entry)} is not a package. ${EXAMPLE}`);
    const [name, size] = parts;
    const [width, length] = splitSize(size);
    return unlessRefused(() => ({
        name: name.replace(/[\s:,–—-]+$/, ''),
        width: readField(lengthField('The width'), width, style),
        length: readField(lengthField('The length'), length, style),
        price: readField(moneyField('The price'), price, style),
        priced: price?.trim(),
    }), ({ message }) => refuse(`${quoted(entry)}: ${message}`));
};
/** A list as text, as {@link readPackages} reads it. */
const writePackages = (raw) => {
    const write = (entry) => {
        if (Object(entry) !== entry)
            return textOf(entry);
        const { name, width, length, price } = entry;
        // the colon keeps a name that ends in a number apart from the width
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
        refuse(`A list has 1 to ${MOST_PACKAGES} packages. ${EXAMPLE}`);
    return entries.map((entry) => readPackage(entry, style));
};
/** The list with this unit at every size that names none. */
const packagesInUnit = (list, unit) => list
    .split(';')
    .map((entry) => {
    const [before = '', ...price] = entry.split('@');
    const parts = before.length > LONGEST_ENTRY ? undefined : partsOf(before, { units: unit, comma: true });
    if (!parts)
        return entry.trim();
    const [name, size] = parts;
    return [[name, inUnit(size, unit, true)].filter(Boolean).join(' '), ...price].join(' @');
})
    .join('; ');
/** Those that fit first; then those with the least price, and after them those without one by area. */
const rankPackages = (packages, need) => packages
    .map((pack) => {
    const straight = pack.width.gte(need.width) && pack.length.gte(need.length);
    const turned = !straight && pack.width.gte(need.length) && pack.length.gte(need.width);
    return { ...pack, fits: straight || turned, turned };
})
    .sort((a, b) => {
    const area = a.width.mul(a.length).compare(b.width.mul(b.length));
    const price = a.price && b.price ? a.price.compare(b.price) : Number(!a.price) - Number(!b.price);
    return Number(b.fits) - Number(a.fits) || price || area;
});

export { packagesInUnit, rankPackages, readPackages, writePackages };
