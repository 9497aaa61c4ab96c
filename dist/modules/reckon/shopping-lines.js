import { least, ZERO, sum, wholeDown, exact } from '../measure/exact.js';
import { asTyped } from '../measure/format.js';
import { toPriced } from '../measure/shop.js';
import { COTTON_WIDTH } from '../trade/conventions.js';
import { asWords } from './book.js';
import { readLength } from './fields.js';
import { plural } from './shared.js';
import { planTogether } from './together.js';
import { priceOf, byWidth } from './worksheet-parts.js';

const fabricOf = (letter, parts) => letter ? `Fabric ${letter}` : (parts[0]?.title ?? '');
/** Says so where others declare their fabric, and these parts do not. */
const noteUndeclared = ({ notes }, [first], letter, parts) => {
    const called = fabricOf(letter, parts);
    if (first)
        notes.push(letter
            ? `${called} is used by ${parts.map(({ title }) => title.toLowerCase()).join(' and ')}, but not declared. Add a <quilt-fabric letter="${letter}">.`
            : `${called} names no fabric, so it has a line of its own. Write fabric="${first.letter}" on it, or another letter.`);
};
/** The lines of one fabric: one for each width of cloth that its parts are cut from. */
const linesOf = (book, declared, { key, letter, parts }, plan) => {
    const fabric = declared.find((one) => one.letter === letter);
    if (!fabric)
        noteUndeclared(book, declared, letter, parts);
    const price = priceOf(book, fabric?.price, `fabric ${letter}`);
    const widths = byWidth(parts);
    const several = widths.length > 1;
    if (several)
        book.notes.push(`${fabricOf(letter, parts)} is cut from cloth of ${widths.length} widths, so each width has a line of its own. To buy one width, write it on each of these parts, like fabric-width="${asTyped(least(...widths.map(([part]) => part.sold)), book.style)}".`);
    return widths.map((parts, at) => lineOf(book, plan, { key: at ? `${key} ${at + 1}` : key, letter, parts }, fabric?.name ?? '', price, several));
};
/** A part's own price, of a yard or a metre as the worksheet has it: its own step may be of the other. */
const ownPrice = (book, { title, price, per }) => {
    const own = priceOf(book, price, title.toLowerCase());
    return own && per ? own.div(toPriced(per, book.values.increment)) : own;
};
/** The line of parts that are cut from one cloth; `several`, where their fabric has lines of other widths. */
const lineOf = (book, plan, group, name, ofFabric, several) => {
    const { key, letter, parts } = group;
    const { l } = book;
    const { increment, bolt, kits } = book.values;
    const price = ofFabric ?? parts.map((part) => ownPrice(book, part)).find(Boolean);
    const width = parts.map(({ sold }) => sold).find((sold) => sold.gt(ZERO));
    const usual = book.values.fabricWidth ?? readLength(COTTON_WIDTH, { units: 'in' });
    const wide = width && (several || !width.equals(usual)) ? `, ${l(width)} wide` : '';
    const text = fabricOf(letter, parts);
    const called = text + wide;
    const { need, laid } = planTogether(book, parts, plan, called);
    const { bought, buy } = book.upToStep(need, `${called}: `);
    const spare = bought.sub(need);
    const added = sum(parts.map(({ need }) => need));
    const saved = added.sub(need);
    const word = ({ title }) => asWords(title.toLowerCase());
    const sums = parts.length > 1
        ? `${parts.map((part) => `${book.n(part.need)} (${word(part)})`).join(' + ')} = ${l(added)}`
        : word(parts[0]);
    book.row(`need-${key}`, `${called}${name ? `, ${name}` : ''}`, need, saved.gt(ZERO) ? `${sums}; planned together ${l(need)}` : sums);
    book.row(`buy-${key}`, 'Buy', buy.text + wide, `${l(need)}, up to a step of {increment}; ${l(spare)} to spare`, [`need-${key}`]);
    const bolts = kits && bought.gt(ZERO) ? boltsFor(book, kits, group, called, buy) : undefined;
    const costOf = (cloth) => price && book.paid(toPriced(cloth, increment).mul(price));
    const paid = costOf(bought);
    return {
        line: {
            letter,
            name,
            parts: parts.map(({ title, need }) => ({ title, need })),
            need,
            saved,
            buy,
            text: buy.text + wide,
            width,
            spare,
            price: price && book.sum(price, price),
            cost: paid && book.sum(paid),
            bolts,
            together: laid && { fabric: letter, need, buy, pieces: [], ...laid },
        },
        text,
        paid,
        boltCost: costOf(bolt.mul(bolts ?? 0)),
    };
};
/** How many bolts so many kits take, with its row; undefined, with a note, where a bolt is shorter than one kit's cloth. */
const boltsFor = (book, kits, { key, parts }, called, { inches, text }) => {
    const { bolt } = book.values;
    const each = wholeDown(bolt.div(exact(inches)));
    if (each) {
        const bolts = Math.ceil(kits / each);
        book.row(`bolts-${key}`, `Bolts for ${plural(kits, 'kit')}`, `${bolts}`, `${plural(each, 'length')} of ${text} from each bolt of {bolt unit}; with ${text} in one length for each kit, fewer bolts would not do`, [`buy-${key}`, 'kits']);
        return bolts;
    }
    const lengths = parts.map(({ title, need }) => ({ title, buy: book.toBuy(need) }));
    const apart = lengths.every(({ buy }) => exact(buy.inches).lte(bolt))
        ? `, or cut its parts as lengths of their own: ${lengths.map(({ title, buy }) => `${buy.text} for ${title.toLowerCase()}`).join(', ')}`
        : '';
    book.notes.push(`${called}: a kit’s ${text} is longer than a bolt of ${book.rows.find(({ id }) => id === 'bolt').value}. Write a longer bolt, like ${text}${apart}.`);
    return undefined;
};

export { linesOf };
