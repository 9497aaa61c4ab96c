import { planCloth } from '../cutting/plan.js';
import { sum, exact } from '../measure/exact.js';
import { soldLength, purchase } from '../measure/shop.js';
import { BOLT } from '../trade/conventions.js';
import { Book } from './book.js';
import { lengthField, optional, countField } from './fields.js';
import { clothFields, quiltFields, shopFields, plural } from './shared.js';
import { linesOf } from './shopping-lines.js';
import { adoptCurrency, readFabrics, readItems, sentences, groupsOf, priceOf } from './worksheet-parts.js';

const { shrinkage, increment, currency } = shopFields;
const worksheetFields = {
    width: optional(quiltFields.width, { more: true, hint: 'where there is no quilt top to reckon it from' }),
    length: optional(quiltFields.length, { more: true, hint: 'where there is no quilt top to reckon it from' }),
    fabricWidth: optional(lengthField(clothFields.fabricWidth.label, {
        more: true,
        hint: 'of every fabric that does not say its own',
    })),
    seam: optional(lengthField('Seam allowance', { zero: true, most: '2 in', more: true })),
    kits: optional(countField('Kits', 10_000, { hint: 'for a shop: how many kits to cut' })),
    bolt: {
        ...lengthField('Cloth on a bolt', {
            initial: BOLT,
            most: '100000 in',
            hint: 'a kit’s cloth is never pieced from two bolts',
        }),
        write: soldLength,
    },
    shrinkage,
    increment,
    currency,
};
const itemInWords = ({ text, fabric }) => (fabric ? `${text} of fabric ${fabric}` : text);
const countItems = (book, items) => items.map((item) => {
    const price = priceOf(book, item.price, item.text);
    return { item, text: itemInWords(item), paid: price && book.paid(price) };
});
/** Says that a fabric is declared and nothing is cut from it, though a part may name it. */
const noteUnused = ({ notes }, letter, isNamed) => void notes.push(`Fabric ${letter} is declared, but no part is cut from it. ${isNamed ? 'The part that names it takes no cloth from it' : `Write fabric="${letter}" on a part`}.`);
/** What everything comes to, with its rows and what has no price. */
const totals = (book, lines, items, isUnfinished) => {
    const { kits } = book.values;
    const counted = [...lines, ...items];
    const unpriced = counted.filter(({ paid }) => !paid).map(({ text }) => text);
    if (unpriced.length === counted.length)
        return { kits: kits ? { count: kits } : undefined, soFar: isUnfinished || undefined };
    if (unpriced.length)
        book.notes.push(`The total leaves out what has no price: ${[...new Set(unpriced)].join(', ')}.`);
    const costs = counted.flatMap(({ paid }) => paid ?? []);
    const total = book.sum(sum(costs));
    const soFar = isUnfinished || unpriced.length > 0;
    const words = soFar ? ' so far' : '';
    book.row('total', `${kits ? 'One kit' : 'Total'}${words}`, total.text, costs.map((cost) => book.money(cost)).join(' + '));
    const sums = { total, soFar: soFar || undefined };
    if (!kits)
        return sums;
    const ofItems = sum(items.flatMap(({ paid }) => paid ?? []));
    const whole = sum(lines.flatMap(({ boltCost }) => boltCost ?? [])).add(ofItems.mul(kits));
    // What a bolt is too short for has no number of bolts.
    const inBolts = lines.every(({ line: { bolts, buy } }) => bolts ?? buy.inches === '0');
    if (inBolts)
        book.row('kitCost', `${kits > 1 ? `All ${kits} kits` : 'In whole bolts'}${words}`, book.money(whole), `whole bolts${items.length ? ', and the items of every kit' : ''}: ${book.money(book.paid(whole.div(kits)))} a kit`, ['kits', 'bolt']);
    return {
        ...sums,
        kits: { count: kits, each: total, cost: inBolts ? book.sum(whole) : undefined },
    };
};
/** What is on the list, in a sentence. */
const summaryOf = (lines, items, isUnfinished) => {
    const count = new Set(lines.map(({ line }, at) => line.letter || at)).size;
    const byLength = items.some(({ item }) => item.fabric) ? ' by length' : '';
    const things = [count ? plural(count, 'fabric') + byLength : '', ...items.map(({ text }) => text)]
        .filter(Boolean)
        .join(', ');
    return things
        ? `${things}.`
        : `Nothing on the list yet${isUnfinished ? '' : ': put calculators inside this worksheet'}.`;
};
/**
 * One shopping list from all the parts of a quilt: each fabric's parts are added before they are rounded, and planned
 * together where that saves cloth; with prices, and with bolts where kits are cut. A part whose fabric was not declared
 * still gets its line.
 */
const reckonWorksheet = (input = {}, plan = planCloth) => {
    const book = new Book(worksheetFields, input);
    return book.finish(() => {
        const given = input ?? {};
        adoptCurrency(book, given);
        const declared = readFabrics(book, given.fabrics);
        const items = readItems(given.items, declared);
        const unfinished = sentences(given.unfinished);
        const isUnfinished = unfinished.length > 0;
        book.notes.push(...sentences(given.troubles), ...unfinished);
        book.given('kits', 'bolt', 'width', 'length', 'fabricWidth', 'seam', 'shrinkage', 'increment', 'currency');
        const lines = groupsOf(book, declared, given.parts).flatMap((group) => {
            if (group.parts.length)
                return linesOf(book, declared, group, plan);
            const { letter } = group;
            if (!isUnfinished && !items.some(({ fabric }) => fabric === letter))
                noteUnused(book, letter, sentences(given.named).includes(letter));
            return [];
        });
        const bought = countItems(book, items);
        const money = totals(book, lines, bought, isUnfinished);
        const need = sum(lines.map(({ line }) => exact(line.need)));
        const inches = sum(lines.map(({ line }) => exact(line.buy.inches)));
        return {
            buy: purchase(inches, book.values.increment, book.style.comma),
            fabric: need,
            spare: inches.sub(need),
            summary: summaryOf(lines, bought, isUnfinished),
            cuts: [],
            fabrics: lines.map(({ line }) => line),
            items: bought.map(({ item: { price: _, ...item }, paid }) => ({
                ...item,
                cost: paid && book.sum(paid),
            })),
            ...money,
        };
    });
};

export { reckonWorksheet, worksheetFields };
