import { most, least, ZERO } from '../measure/exact.js';
import { mixed } from '../measure/format.js';
import { INCHES } from '../measure/units.js';
import { moneyField, textOf, unlessRefused, readField, readLength, refuse } from './fields.js';

/** The entries of a list, as far as a page wrote one. */
const entries = (list) => Array.isArray(list) ? list.filter((one) => one && typeof one === 'object') : [];
const sentences = (list) => Array.isArray(list) ? list.map(textOf).filter(Boolean) : [];
/** What was written; what cannot be read is named in a note, as of this, and left out. */
const tried = (book, field, written, of) => unlessRefused(() => {
    if (field.kind === 'money')
        book.sameCurrency(written);
    return readField(field, written, book.style);
}, ({ message }) => {
    book.notes.push(`${of}: ${message}`);
    return undefined;
});
const money = moneyField('A price');
/** The price of this, where one was given that can be read. */
const priceOf = (book, written, what) => tried(book, money, written, `The price of ${what}`);
/** Lets a currency that any price names hold for all, where none is given. */
const adoptCurrency = (book, { fabrics, parts, items }) => book.adopt(...[...entries(fabrics), ...entries(parts)].map(({ price }) => price), ...entries(items).map(({ cost }) => cost));
/** A fabric's letter, with one space wherever there are several. */
const letterOf = (written) => textOf(written).replace(/\s+/g, ' ').trim();
/** The fabrics that the page declares; of two with one letter the first. */
const readFabrics = (book, fabrics) => {
    const declared = [];
    for (const { name, price, fabricWidth, ...fabric } of entries(fabrics)) {
        const letter = letterOf(fabric.letter);
        if (!letter)
            book.notes.push('A fabric has no letter. Write letter="A".');
        else if (declared.some((one) => one.letter === letter))
            book.notes.push(`Two fabrics have the letter ${letter}; the first is used. Give the other a letter of its own.`);
        else {
            tried(book, book.fields.fabricWidth, fabricWidth, `The width of fabric ${letter}`);
            declared.push({ letter, name: textOf(name), price });
        }
    }
    return declared;
};
const readItems = (items, declared) => entries(items).map(({ title, fabric, text, cost }) => ({
    title: textOf(title),
    fabric: textOf(fabric),
    name: declared.find(({ letter }) => letter === fabric)?.name ?? '',
    text: textOf(text) || textOf(title) || 'something',
    price: cost,
}));
const inInches = { units: 'in' };
const readPart = (name, part) => {
    const { need, width = '0', sold = width, washed = '1', pieces, price, per } = part;
    const amount = (written) => {
        const value = readLength(written, inInches);
        return value.lt(ZERO) ? refuse('cloth cannot be less than 0. Write it like 22 1/2.') : value;
    };
    const cut = entries(pieces);
    return {
        title: name,
        price,
        per: per === 'yd' || per === 'm' ? INCHES[per] : undefined,
        need: amount(need),
        width: amount(width),
        sold: amount(sold),
        washed: amount(washed),
        pieces: cut.map(({ width, length, count, turn }) => {
            const sides = [amount(width), amount(length)];
            // Long side across, as a top plans its own: the same search comes to the same, or to less.
            const [across, along] = turn ? [most(...sides), least(...sides)] : sides;
            return { width: across, height: along, count, turn: !!turn };
        }),
        names: cut.map(({ piece }) => textOf(piece) || name),
    };
};
/** The parts of each fabric; one that names none is a group of its own, since its cloth may be any. */
const groupsOf = (book, declared, parts) => {
    const groups = new Map(declared.map(({ letter }) => [letter, { key: letter, letter, parts: [] }]));
    for (const [at, part] of entries(parts).entries()) {
        const name = textOf(part.title) || 'Part';
        const letter = letterOf(part.fabric);
        const key = letter || `part ${at}`;
        const group = groups.get(key) ?? { key, letter, parts: [] };
        group.parts.push(book.blame('parts', () => readPart(name, part), `${name}: `));
        groups.set(key, group);
    }
    return [...groups.values()];
};
/** Parts that are cut from cloth of one width; one that does not say its width goes with the first. */
const byWidth = (parts) => {
    const widths = [...new Set(parts.map(({ sold }) => mixed(sold)))].filter((width) => width !== '0');
    return widths.length < 2
        ? [parts]
        : widths.map((width, at) => parts.filter(({ sold }) => mixed(sold) === width || (!at && sold.equals(ZERO))));
};

export { adoptCurrency, byWidth, groupsOf, letterOf, priceOf, readFabrics, readItems, sentences };
