import { most, least } from '../measure/exact.js';
import { mixed } from '../measure/format.js';
import { splitSize, quoted } from '../measure/parse.js';
import { SHEETS } from '../trade/cloths.js';
import { readLength } from './fields.js';
import { plural } from './shared.js';

/** So many of them, to buy. */
const sheets = ({ height, name, size }, count) => ({
    inches: mixed(height.mul(count)),
    amount: `${count}`,
    unit: 'sheet',
    text: plural(count, name) + size,
});
/** Sheets by their names, or a size written out; undefined for cloth by length. */
const sheetOf = (book, kept) => {
    const written = book.values.sheet;
    if (!written)
        return undefined;
    const key = written.toLowerCase().replace(/\s+/g, '-');
    const named = Object.hasOwn(SHEETS, key) ? SHEETS[key] : undefined;
    const sides = named ? [named.width, named.height] : splitSize(written);
    if (!sides)
        return book.refuse('sheet', `${quoted(written)} is not a sheet of cloth. Write fat-quarter, fat-eighth or a size like 18 x 20.`);
    const [a, b] = book.blame('sheet', () => sides.map((side) => readLength(side, book.style)));
    if (a.lte(0) || b.lte(0))
        book.refuse('sheet', 'A sheet’s sides are more than 0. Write it like 18 x 20.');
    book.cautionOfSelvages(most(a, b));
    // A one-way print has to lie as it is written; else the longer side is across, so that there are fewer cuts.
    const [width, height] = book.values.oneWay ? [a, b] : [most(a, b), least(a, b)];
    const { name = 'sheet' } = named ?? {};
    return {
        width: width.mul(kept),
        height: height.mul(kept),
        name,
        size: name.startsWith('fat') ? '' : `, ${book.size(a, b)}`,
    };
};

export { sheetOf, sheets };
