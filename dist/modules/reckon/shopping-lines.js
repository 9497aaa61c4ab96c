import { least, ZERO, sum, exact, wholeDown } from '../measure/exact.js';
import { asTyped } from '../measure/format.js';
import { toPriced, purchase } from '../measure/shop.js';
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
const wordOf = ({ title }) => title.toLowerCase();
const and = (words) => words.join(' and ');
/** The lengths to buy of one cloth, rounded up; each warns of a small spare. */
const buyLengths = (book, lengths, called) => {
    const bought = lengths.map((length) => {
        const of = lengths.length > 1 ? `, ${and(length.parts.map(wordOf))}` : '';
        return { ...length, buy: book.upToStep(length.need, `${called}${of}: `).buy };
    });
    const { increment } = book.values;
    const all = purchase(sum(bought.map(({ buy }) => exact(buy.inches))), increment, book.style.comma);
    return { lengths: bought, buy: { ...all, text: and(bought.map(({ buy }) => buy.text)) } };
};
/** Says what each of two lengths is for, and what one length would be. */
const noteLengths = (book, called, need, lengths) => {
    const each = lengths.map(({ parts, buy }) => `${buy.text} for ${and(parts.map(wordOf))}`);
    const all = lengths.flatMap(({ parts }) => parts).length > 2 ? 'all' : 'both';
    book.notes.push(`${called}: buy two lengths, ${each.join(', and ')}. One length for ${all} would be ${book.toBuy(need).text}.`);
};
/** The rows of what a cloth's parts need and of what to buy. */
const rowsOf = (book, { key, parts }, label, wide, { need, added, buy, spare, lengths, }) => {
    const { l, n } = book;
    const named = (need, parts) => `${n(need)} (${asWords(and(parts.map(wordOf)))})`;
    const sums = parts.length > 1
        ? `${parts.map((part) => named(part.need, [part])).join(' + ')} = ${l(added)}`
        : asWords(wordOf(parts[0]));
    const enough = exact(book.toBuy(added).inches).lte(exact(buy.inches));
    const together = `; planned together ${l(need)}${enough ? ', though what you buy does for each by itself too' : ''}`;
    book.row(`need-${key}`, label, need, need.lt(added) ? sums + together : sums);
    const each = lengths.length > 1
        ? `${and(lengths.map(({ need, parts }) => named(need, parts)))}, each up to`
        : `${l(need)}, up to`;
    book.row(`buy-${key}`, 'Buy', buy.text + wide, `${each} a step of {increment}; ${l(spare)} to spare`, [
        `need-${key}`,
    ]);
};
/** The line of parts that are cut from one cloth; `several`, where their fabric has lines of other widths. */
const lineOf = (book, plan, group, name, ofFabric, several) => {
    const { letter, parts } = group;
    const { increment, bolt, kits } = book.values;
    const price = ofFabric ?? parts.map((part) => ownPrice(book, part)).find(Boolean);
    const width = parts.map(({ sold }) => sold).find((sold) => sold.gt(ZERO));
    const usual = book.values.fabricWidth ?? readLength(COTTON_WIDTH, { units: 'in' });
    const wide = width && (several || !width.equals(usual)) ? `, ${book.l(width)} wide` : '';
    const text = fabricOf(letter, parts);
    const called = text + wide;
    const { laid, ...planned } = planTogether(book, parts, plan, called);
    const { buy, lengths } = buyLengths(book, planned.lengths, called);
    const need = sum(lengths.map(({ need }) => need));
    const bought = exact(buy.inches);
    const spare = bought.sub(need);
    const added = sum(parts.map(({ need }) => need));
    const isOne = lengths.length === 1;
    if (!isOne)
        noteLengths(book, called, need, lengths);
    rowsOf(book, group, `${called}${name ? `, ${name}` : ''}`, wide, { need, added, buy, spare, lengths });
    const bolts = kits && bought.gt(ZERO) ? boltsFor(book, kits, group, called, { buy, lengths }) : undefined;
    const costOf = (cloth) => price && book.paid(toPriced(cloth, increment).mul(price));
    const paid = costOf(bought);
    return {
        line: {
            letter,
            name,
            parts: parts.map(({ title, need }) => ({ title, need })),
            need,
            saved: added.sub(need),
            buy,
            text: buy.text + wide,
            width,
            spare,
            lengths: isOne
                ? undefined
                : lengths.map(({ parts, ...length }) => ({ ...length, parts: parts.map(({ title }) => title) })),
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
/** How many bolts so many kits take, with its row; undefined, with a note, where a bolt is shorter than a kit's length. */
const boltsFor = (book, kits, { key, parts }, called, { buy, lengths }) => {
    const { bolt } = book.values;
    const fitting = ({ inches }) => wholeDown(bolt.div(exact(inches)));
    const row = (bolts, how) => {
        book.row(`bolts-${key}`, `Bolts for ${plural(kits, 'kit')}`, `${bolts}`, how, [`buy-${key}`, 'kits']);
        return bolts;
    };
    const each = fitting(buy);
    const fromEach = 'from each bolt of {bolt unit}';
    const tooLong = lengths.find(({ buy }) => !fitting(buy));
    if (!tooLong) {
        // Bolts hold both lengths of a kit, or those of one kind each: whichever takes fewer.
        const both = each ? Math.ceil(kits / each) : Infinity;
        const ofOneKind = lengths.reduce((all, { buy }) => all + Math.ceil(kits / fitting(buy)), 0);
        if (ofOneKind < both)
            return row(ofOneKind, `${lengths.map(({ buy }) => `${fitting(buy)} × ${buy.text}`).join(', or ')}, ${fromEach}`);
        return row(both, lengths.length > 1
            ? `${each} × ${buy.text} ${fromEach}`
            : `${plural(each, 'length')} of ${buy.text} ${fromEach}; with ${buy.text} in one length for each kit, fewer bolts would not do`);
    }
    const apart = parts.map(({ title, need }) => ({ title, buy: book.toBuy(need) }));
    const orApart = apart.every(({ buy }) => fitting(buy))
        ? `, or cut its parts as lengths of their own: ${apart.map(({ title, buy }) => `${buy.text} for ${title.toLowerCase()}`).join(', ')}`
        : '';
    const { text } = tooLong.buy;
    book.notes.push(`${called}: a kit’s ${text} is longer than a bolt of ${book.rows.find(({ id }) => id === 'bolt').value}. Write a longer bolt, like ${text}${orApart}.`);
    return undefined;
};

export { linesOf };
