import { textOf } from '../ledger/field.js';
import { Ledger } from '../ledger/ledger.js';
import { readLength } from '../ledger/lengths.js';
import { readSheet } from '../calculators/cutting/sheets.js';
import { ownWords } from '../ledger/own-words.js';
import { unlessRefused, refuse } from '../ledger/refusal.js';
import { sayOfShop } from '../ledger/shop.js';
import { ZERO, most, ONE } from '../measure/exact.js';
import { planCloth } from '../planner/plan.js';
import { letterOf } from './parts.js';
import { adoptCurrency } from './prices.js';
import { reckonOn } from './reckon.js';
import { say } from './sayings.js';
import { worksheetFields } from './shape.js';

/** The entries of a list, as far as a page wrote one. */
const entries = (list) => Array.isArray(list) ? list.filter((one) => one && typeof one === 'object') : [];
const texts = (list) => (Array.isArray(list) ? list.map(textOf).filter(Boolean) : []);
/** Cloth in inches. Throws a `Refusal`. */
const readAmount = (written) => {
    const value = readLength(written, { units: 'in' });
    return value.lt(0) ? refuse(say('negativeCloth')) : value;
};
const wordsOnce = () => {
    const known = new Map();
    return (text) => {
        const message = known.get(text) ?? ownWords(text);
        known.set(text, message);
        return message;
    };
};
const readPieces = (pieces, words) => entries(pieces).map(({ piece, width, length, count, turn }) => {
    const name = textOf(piece);
    return {
        ...(name && { piece: words(name) }),
        width: readAmount(width),
        length: readAmount(length),
        // Pieces without a number are not planned: their part is cut on its own.
        count: typeof count === 'number' ? count : NaN,
        turn: !!turn,
    };
});
/** Ways to cut a part from what others leave. One that does not say how many pieces is left out. */
const readWays = (ways, words) => ways
    .map((way) => (Array.isArray(way) ? readPieces(way, words) : []))
    .filter((way) => way.length && way.every(({ count }) => Number.isInteger(count) && count > 0));
const readLeaves = (leaves) => entries(leaves).map(({ x, y, width, height }) => ({
    x: readAmount(x),
    y: readAmount(y),
    width: readAmount(width),
    height: readAmount(height),
}));
/** The sheets of a part, in their size after the wash. Throws a `Refusal` if it does not say what to cut from them. */
const readSheets = (written, pieces, washed) => {
    const text = textOf(written).trim();
    if (!text)
        return undefined;
    if (!pieces.length || pieces.some(({ count }) => !Number.isInteger(count) || count < 1))
        refuse(say('noPieces'));
    const kept = washed.gt(1) ? ONE.div(washed) : ONE;
    return { sheet: readSheet(text, { units: 'in' }, { oneWay: pieces.some(({ turn }) => !turn), kept }) };
};
/** How much is bought for what a wash leaves: never less than that. */
const readWashed = (written) => most(ONE, readAmount(written));
const MOST_WEEKS = 520;
/** A whole number of weeks. Anything else says no week. */
const readWeek = (written) => {
    const week = Number(textOf(written) || NaN);
    return Number.isInteger(week) && week > 0 && week <= MOST_WEEKS ? week : undefined;
};
const readPart = ({ title, fabric, need, width = '0', sold = width, washed = '1', ...part }, words) => {
    const name = textOf(title);
    const called = name ? words(name) : say('somePart');
    const week = readWeek(part.week);
    const read = () => {
        const pieces = Array.isArray(part.pieces) ? readPieces(part.pieces, words) : [];
        const perInch = readWashed(washed);
        const sheets = readSheets(part.sheet, pieces, perInch);
        return {
            title: called,
            when: week ? say('inWeek', { week, title: called }) : called,
            week,
            fabric: letterOf(fabric),
            need: sheets ? ZERO : readAmount(need),
            width: readAmount(width),
            sold: readAmount(sold),
            washed: perInch,
            pieces,
            leaves: Array.isArray(part.leaves) ? readLeaves(part.leaves) : undefined,
            fromLeftover: Array.isArray(part.fromLeftover) ? readWays(part.fromLeftover, words) : undefined,
            sheets,
            price: { written: part.price },
            per: part.per === 'yd' || part.per === 'm' ? part.per : undefined,
        };
    };
    return unlessRefused(read, ({ problem: says }) => refuse(sayOfShop('about', { what: called, says }), 'parts'));
};
const readItem = ({ title, fabric, text, cost }) => {
    const words = textOf(text) || textOf(title);
    return {
        title: ownWords(textOf(title)),
        fabric: textOf(fabric),
        buy: words ? ownWords(words) : say('something'),
        cost: { written: cost },
    };
};
/** A worksheet's plain input as values. Throws a `Refusal`. */
const readInput = (ledger, input) => {
    const words = wordsOnce();
    const fabrics = entries(input.fabrics).map(({ letter, ...fabric }) => ({ letter, ...fabric }));
    const parts = entries(input.parts);
    const items = entries(input.items).map(readItem);
    // A price that names the currency counts, even if the part cannot be read.
    adoptCurrency(ledger, { fabrics, parts: parts.map(({ price }) => ({ price: { written: price } })), items });
    return {
        fabrics,
        parts: parts.map((part) => readPart(part, words)),
        items,
        makers: [],
        troubles: texts(input.troubles).map(ownWords),
        unfinished: texts(input.unfinished).map(ownWords),
        named: texts(input.named),
    };
};
/** The shopping list of a plain input. */
const reckonPlain = (input = {}, plan = planCloth) => {
    const ledger = new Ledger(worksheetFields, input);
    return ledger.finish(() => reckonOn(ledger, readInput(ledger, input ?? {}), plan));
};

export { reckonPlain };
