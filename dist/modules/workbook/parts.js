import { readSheet } from '../calculators/cutting/sheets.js';
import { textOf } from '../ledger/field.js';
import { usualLength } from '../ledger/lengths.js';
import { sayOfShop } from '../ledger/shop.js';
import { ONE } from '../measure/exact.js';
import { COTTON_WIDTH } from '../trade/conventions.js';
import { readAtHand } from './at-hand.js';
import { Stock } from './own-cloth.js';
import { tried, readWritten } from './prices.js';
import { say } from './sayings.js';
import { worksheetFields } from './shape.js';

/** The letter of a fabric, with single spaces in it. */
const letterOf = (written) => textOf(written).normalize('NFC').replace(/\s+/g, ' ').trim();
/** The fabrics that the page declares. If two have the same letter, the first one counts. */
const readFabrics = (ledger, fabrics) => {
    const declared = [];
    for (const { name, price, fabricWidth, sheet, atHand, ...fabric } of fabrics) {
        const letter = letterOf(fabric.letter);
        if (!letter)
            ledger.note(say('noLetter'));
        else if (declared.some((one) => one.letter === letter))
            ledger.note(say('sameLetter', { letter }));
        else {
            const width = tried(ledger, say('widthOfFabric', { letter }), () => readWritten(ledger, worksheetFields.fabricWidth, fabricWidth, 'fabricWidth'));
            const written = textOf(sheet).trim();
            if (written)
                tried(ledger, say('fabricOf', { letter }), () => readSheet(written, ledger.style, { oneWay: false, kept: ONE }));
            declared.push({
                letter,
                name: textOf(name),
                price,
                sheet: written,
                ...ownOf(ledger, letter, atHand, width),
            });
        }
    }
    return declared;
};
/** What the reader has of a fabric. Kits are for others, so her own cloth does not count there. */
const ownOf = (ledger, letter, atHand, width) => {
    const { values, style } = ledger;
    if (atHand === undefined || atHand === null || values.kits)
        return { atHand: undefined, stock: undefined };
    const written = textOf(atHand).trim();
    const usual = width ?? values.fabricWidth ?? usualLength(COTTON_WIDTH, style);
    const { pieces, problems } = readAtHand(written, usual, style);
    for (const says of problems)
        ledger.note(sayOfShop('about', { what: say('atHandOf', { letter }), says }));
    return { atHand: pieces, stock: new Stock(written, pieces, !!width) };
};
/** The parts of each fabric. A part that names no fabric is its own group, since its cloth may be any. */
const groupsOf = (declared, parts) => {
    const groups = new Map(declared.map(({ letter }) => [letter, { key: letter, letter, parts: [] }]));
    for (const [at, part] of parts.entries()) {
        const letter = part.fabric;
        const key = letter || `part ${at}`;
        const group = groups.get(key) ?? { key, letter, parts: [] };
        group.parts.push(part);
        groups.set(key, group);
    }
    return [...groups.values()];
};
/** The widths of these parts, as sold, each once. 0 means that the width is not known. */
const widthsOf = (parts) => {
    const widths = [];
    for (const { sold } of parts)
        if (!sold.equals(0) && !widths.some((width) => width.equals(sold)))
            widths.push(sold);
    return widths;
};
/** The parts that are cut from cloth of one width. Parts without a width go with the first width. */
const byWidth = (parts) => {
    const widths = widthsOf(parts);
    return widths.length < 2
        ? [parts]
        : widths.map((width, at) => parts.filter(({ sold }) => sold.equals(width) || (!at && sold.equals(0))));
};
const titlesOf = (parts) => parts.map(({ title }) => title);

export { byWidth, groupsOf, letterOf, readFabrics, titlesOf };
