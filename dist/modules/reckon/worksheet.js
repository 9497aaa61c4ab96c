import { canBeCut } from '../cutting/check.js';
import { least, ZERO, sum, wholeDown, exact, most, ONE } from '../measure/exact.js';
import { asTyped, mixed } from '../measure/format.js';
import { soldLength, toPriced, purchase } from '../measure/shop.js';
import { BOLT, COTTON_WIDTH } from '../trade/conventions.js';
import { Book, asWords } from './book.js';
import { PLANNING } from './cutting.js';
import { lengthField, optional, countField, moneyField, textOf, lengthOf, readField, Refusal, refuse } from './fields.js';
import { clothFields, quiltFields, shopFields, plural } from './shared.js';
import { laidOut } from './strips.js';

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
const entries = (list) => Array.isArray(list) ? list.filter((one) => one && typeof one === 'object') : [];
const sentences = (list) => (Array.isArray(list) ? list.map(textOf).filter(Boolean) : []);
const inInches = { units: 'in' };
const money = moneyField('A price');
const readPart = (name, part) => {
    const { need, width = '0', sold = width, washed = '1', pieces, price } = part;
    const amount = (written) => {
        const value = lengthOf(written, inInches);
        return value.lt(ZERO) ? refuse('cloth cannot be less than 0. Write it like 22 1/2.') : value;
    };
    const cut = entries(pieces);
    return {
        title: name,
        price,
        need: amount(need),
        width: amount(width),
        sold: amount(sold),
        washed: amount(washed),
        pieces: cut.map(({ width, length, count, turn }) => ({
            width: amount(width),
            height: amount(length),
            count,
            turn: !!turn,
        })),
        names: cut.map(({ piece }) => textOf(piece) || name),
    };
};
/** Parts that are cut from cloth of one width; one that does not say its width goes with the first. */
const byWidth = (parts) => {
    const widths = [...new Set(parts.map(({ sold }) => mixed(sold)))].filter((width) => width !== '0');
    return widths.length < 2
        ? [parts]
        : widths.map((width, at) => parts.filter(({ sold }) => mixed(sold) === width || (!at && sold.equals(ZERO))));
};
/**
 * One shopping list from all the parts of a quilt: each fabric's parts are added before they are rounded, and planned
 * together where that saves cloth; with prices, and with bolts where kits are cut. A part whose fabric was not declared
 * still gets its line.
 */
const reckonWorksheet = (input = {}, plan) => {
    const book = new Book(worksheetFields, input);
    return book.finish(() => {
        const { l, notes } = book;
        const { increment, kits, bolt } = book.values;
        const given = input ?? {};
        /** What was written; what cannot be read is named, and left out. */
        const tried = (field, written, of) => {
            try {
                return readField(field, written, book.style);
            }
            catch (refusal) {
                if (!(refusal instanceof Refusal))
                    throw refusal;
                notes.push(`${of}: ${refusal.message}`);
                return undefined;
            }
        };
        const declared = [];
        for (const { name, price, fabricWidth, ...fabric } of entries(given.fabrics)) {
            const letter = textOf(fabric.letter).trim();
            if (!letter)
                notes.push('A fabric has no letter. Write letter="A".');
            else if (declared.some((one) => one.letter === letter))
                notes.push(`Two fabrics have the letter ${letter}; the first is used. Give the other a letter of its own.`);
            else {
                tried(worksheetFields.fabricWidth, fabricWidth, `The width of fabric ${letter}`);
                declared.push({ letter, name: textOf(name), price });
            }
        }
        const items = entries(given.items).map(({ title, fabric, text, cost }) => ({
            title: textOf(title),
            fabric: textOf(fabric),
            name: declared.find(({ letter }) => letter === fabric)?.name ?? '',
            text: textOf(text) || textOf(title) || 'something',
            price: cost,
        }));
        const unfinished = sentences(given.unfinished);
        const named = sentences(given.named);
        const usual = book.values.fabricWidth ?? lengthOf(COTTON_WIDTH, inInches);
        notes.push(...sentences(given.troubles), ...unfinished);
        book.given('kits', 'bolt', 'width', 'length', 'fabricWidth', 'seam', 'shrinkage', 'increment', 'currency');
        /** The parts of one fabric; a part that names none has a line of its own, since its cloth may be any. */
        const groups = new Map(declared.map(({ letter }) => [letter, { letter, parts: [] }]));
        for (const [at, part] of entries(given.parts).entries()) {
            const name = textOf(part.title) || 'Part';
            const letter = textOf(part.fabric).trim();
            const key = letter || `part ${at}`;
            const group = groups.get(key) ?? { letter, parts: [] };
            group.parts.push(book.blame('parts', () => readPart(name, part), `${name}: `));
            groups.set(key, group);
        }
        let total = ZERO;
        let bolted = ZERO;
        let tooLong = false;
        const unpriced = [];
        const lines = [...groups].flatMap(([key, { letter, parts }]) => {
            const fabric = declared.find((one) => one.letter === letter);
            const called = letter ? `Fabric ${letter}` : (parts[0]?.title ?? '');
            if (!parts.length) {
                if (!unfinished.length && !items.some((item) => item.fabric === letter))
                    notes.push(`${called} is declared, but no part is cut from it. ${named.includes(letter) ? 'The part that names it takes no cloth from it' : `Write fabric="${letter}" on a part`}.`);
                return [];
            }
            if (!fabric && declared.length)
                notes.push(letter
                    ? `${called} is used by ${parts.map(({ title }) => title.toLowerCase()).join(' and ')}, but not declared. Add a <quilt-fabric letter="${letter}">.`
                    : `${called} names no fabric, so it has a line of its own. Write fabric="${declared[0].letter}" on it, or another letter.`);
            const price = tried(money, fabric?.price, `The price of fabric ${letter}`);
            const widths = byWidth(parts);
            if (widths[1])
                notes.push(`${called} is cut from cloth of ${widths.length} widths, so each width has a line of its own. To buy one width, write it on each of these parts, like fabric-width="${asTyped(least(widths[0][0].sold, ...widths.map(([part]) => part.sold)), book.style)}".`);
            return widths.map((parts, at) => lineOf(parts, {
                key: at ? `${key} ${at + 1}` : key,
                letter,
                name: fabric?.name ?? '',
                price,
                several: widths.length > 1,
            }));
        });
        /** The line of parts that are cut from one cloth. */
        function lineOf(parts, { key, letter, name, price: ofFabric, several, }) {
            const price = ofFabric ??
                parts
                    .map(({ title, price }) => tried(money, price, `The price of ${title.toLowerCase()}`))
                    .find(Boolean);
            const width = parts.map(({ sold }) => sold).find((sold) => sold.gt(ZERO));
            const wide = width && (several || !width.equals(usual)) ? `, ${l(width)} wide` : '';
            const called = `${letter ? `Fabric ${letter}` : parts[0].title}${wide}`;
            const added = sum(parts.map(({ need }) => need));
            const { need, laid } = plan ? planTogether(parts, plan, called) : { need: added };
            const { bought, buy } = book.upToStep(need, `${called}: `);
            const spare = bought.sub(need);
            const saved = added.sub(need);
            const cost = price && book.paid(toPriced(bought, increment).mul(price));
            if (cost)
                total = total.add(cost);
            else
                unpriced.push(letter ? `Fabric ${letter}` : parts[0].title);
            const word = ({ title }) => asWords(title.toLowerCase());
            const sums = parts.length > 1
                ? `${parts.map((part) => `${book.n(part.need)} (${word(part)})`).join(' + ')} = ${l(added)}`
                : word(parts[0]);
            book.row(`need-${key}`, `${called}${name ? `, ${name}` : ''}`, need, saved.gt(ZERO) ? `${sums}; planned together ${l(need)}` : sums);
            book.row(`buy-${key}`, 'Buy', `${buy.text}${wide}`, `${l(need)}, up to a step of {increment}; ${l(spare)} to spare`, [`need-${key}`]);
            let bolts;
            if (kits && bought.gt(ZERO)) {
                const each = wholeDown(bolt.div(bought));
                if (each) {
                    bolts = Math.ceil(kits / each);
                    book.row(`bolts-${key}`, `Bolts for ${plural(kits, 'kit')}`, `${bolts}`, `${plural(each, 'length')} of ${buy.text} from each bolt of {bolt unit}; with ${buy.text} in one length for each kit, fewer bolts would not do`, [`buy-${key}`, 'kits']);
                    if (price)
                        bolted = bolted.add(book.paid(toPriced(bolt, increment).mul(bolts).mul(price)));
                }
                else {
                    tooLong = true;
                    const lengths = parts.map(({ title, need }) => ({ title, buy: book.toBuy(need) }));
                    const apart = lengths.every(({ buy }) => exact(buy.inches).lte(bolt))
                        ? `, or cut its parts as lengths of their own: ${lengths.map(({ title, buy }) => `${buy.text} for ${title.toLowerCase()}`).join(', ')}`
                        : '';
                    notes.push(`${called}: a kit’s ${buy.text} is longer than a bolt of ${book.rows.find(({ id }) => id === 'bolt').value}. Write a longer bolt, like ${buy.text}${apart}.`);
                }
            }
            return {
                letter,
                name,
                parts: parts.map(({ title, need }) => ({ title, need: mixed(need) })),
                need: mixed(need),
                saved: mixed(saved),
                buy,
                text: `${buy.text}${wide}`,
                ...(width && { width: mixed(width) }),
                spare: mixed(spare),
                ...(price && { price: book.sum(price, price) }),
                ...(cost && { cost: book.sum(cost) }),
                ...(bolts && { bolts }),
                ...(laid && { together: { fabric: letter, need: mixed(need), buy, pieces: [], ...laid } }),
            };
        }
        const inWords = ({ text, fabric }) => fabric ? `${text} of fabric ${fabric}` : text;
        let itemCost = ZERO;
        const bought = items.map(({ price, ...item }) => {
            const written = tried(money, price, `The price of ${item.text}`);
            const cost = written && book.paid(written);
            if (cost)
                itemCost = itemCost.add(cost);
            else
                unpriced.push(inWords(item));
            return { ...item, ...(cost && { cost: book.sum(cost) }) };
        });
        total = total.add(itemCost);
        const soFar = !!(unpriced.length || unfinished.length);
        const priced = unpriced.length < lines.length + bought.length;
        const whole = bolted.add(itemCost.mul(kits ?? 0));
        if (priced) {
            if (unpriced.length)
                notes.push(`The total leaves out what has no price: ${[...new Set(unpriced)].join(', ')}.`);
            const costs = [...lines, ...bought].flatMap(({ cost }) => cost?.text ?? []);
            book.row('total', `${kits ? 'One kit' : 'Total'}${soFar ? ' so far' : ''}`, book.money(total), costs.join(' + '));
            if (kits && !tooLong)
                book.row('kitCost', `${kits > 1 ? `All ${kits} kits` : 'In whole bolts'}${soFar ? ' so far' : ''}`, book.money(whole), `whole bolts${bought.length ? ', and the items of every kit' : ''}: ${book.money(book.paid(whole.div(kits)))} a kit`, ['kits', 'bolt']);
        }
        const need = sum(lines.map(({ need }) => exact(need)));
        const inches = sum(lines.map(({ buy }) => exact(buy.inches)));
        const count = new Set(lines.map(({ letter }, at) => letter || at)).size;
        const byLength = bought.some(({ fabric }) => fabric) ? ' by length' : '';
        return {
            buy: purchase(inches, increment, book.style.comma),
            fabric: mixed(need),
            spare: mixed(inches.sub(need)),
            summary: count || bought.length
                ? `${[...(count ? [`${plural(count, 'fabric')}${byLength}`] : []), ...bought.map(inWords)].join(', ')}.`
                : `Nothing on the list yet${unfinished.length ? '' : ': put calculators inside this worksheet'}.`,
            cuts: [],
            fabrics: lines,
            items: bought,
            ...(priced && { total: book.sum(total), ...(soFar && { soFar }) }),
            ...(kits && {
                kits: {
                    count: kits,
                    ...(priced && { each: book.sum(total), ...(!tooLong && { cost: book.sum(whole) }) }),
                },
            }),
        };
    });
    /** Several parts of one cloth: laid out together where less is then bought than for one after the other. */
    function planTogether(parts, plan, called) {
        const added = sum(parts.map(({ need }) => need));
        const cut = parts.filter(({ pieces }) => pieces.length);
        if (cut.length < 2)
            return { need: added };
        const apart = sum(cut.map(({ need }) => need));
        const pieces = cut.flatMap(({ pieces }) => pieces);
        const cloth = { width: least(cut[0].width, ...cut.map(({ width }) => width)) };
        const planned = plan(pieces, cloth);
        if (typeof planned === 'number')
            book.notes.push(`${called}: ${PLANNING.toLowerCase()}, to see whether its parts fit together on less.`);
        if (typeof planned === 'number' || !planned.ok || !canBeCut(pieces, cloth, planned))
            return { need: added };
        const length = planned.length.mul(most(ONE, ...cut.map(({ washed }) => washed)));
        const need = added.sub(apart).add(length);
        const bought = (fabric) => exact(book.toBuy(fabric).inches);
        if (bought(need).gte(bought(added)))
            return { need: added };
        return {
            need,
            laid: laidOut(planned, cloth, cut.flatMap(({ names }) => names)),
        };
    }
};

export { reckonWorksheet, worksheetFields };
