import { selvagesOf } from '../../ledger/cloth.js';
import { textOf, isBlank } from '../../ledger/field.js';
import { readLength } from '../../ledger/lengths.js';
import { Purchase } from '../../ledger/purchase.js';
import { inches } from '../../ledger/quantity.js';
import { refuse } from '../../ledger/refusal.js';
import { ONE, most, least, exact } from '../../measure/exact.js';
import { ownUnits } from '../../measure/format.js';
import { splitSize } from '../../measure/parse.js';
import { SHEETS } from '../../trade/cloths.js';
import { say } from './plan-shape.js';

/** The kinds whose name says their size. */
const SAY_THEIR_SIZE = ['fat-quarter', 'fat-eighth'];
/** The sheet of this name, if there is one. */
const sheetCalled = (name, style) => {
    const sheet = Object.hasOwn(SHEETS, name) ? SHEETS[name] : undefined;
    return sheet && { kind: sheet.kind, size: sheet.size[ownUnits(style)] };
};
/** The sides of a sheet, as somebody wrote them or by its name. Throws a `Refusal`. */
const sidesOf = (written, style) => {
    const named = sheetCalled(written.toLowerCase().replace(/\s+/g, '-'), style);
    const [first, second] = named
        ? [named.size.width, named.size.height]
        : (splitSize(written) ?? refuse(say('notSheet', { text: written })));
    const sides = {
        width: readLength(first, style),
        length: readLength(second, style),
        kind: named?.kind ?? 'sheet',
    };
    return least(sides.width, sides.length).gt(0) ? sides : refuse(say('sheetOfNothing'));
};
/** Reads the name of a sheet, or a size. Throws a `Refusal`. */
const readSheet = (written, style, { oneWay, kept }) => {
    const { kind, ...sold } = sidesOf(written, style);
    const longer = most(sold.width, sold.length);
    // A one-way print has to lie as somebody wrote it. Otherwise the longer side goes across, for fewer cuts.
    const { width, length } = oneWay ? sold : { width: longer, length: least(sold.width, sold.length) };
    return {
        width: width.mul(kept),
        length: length.mul(kept),
        kind,
        sold: SAY_THEIR_SIZE.includes(kind) ? undefined : sold,
    };
};
/** The same entry of a record that a page wrote, if it has one. */
const entryOf = (all, key) => all && Object.hasOwn(all, key) && !isBlank(all[key]) ? textOf(all[key]).trim() : '';
/** What a list says that it is cut from, and what the fabrics around it say. Reads each sheet once. */
const sheetsOf = (ledger, { sheets, letters }) => {
    const { sheet: written, oneWay, shrinkage } = ledger.values;
    const known = new Map();
    const sheetOf = (text, fabric) => {
        const before = known.get(text);
        if (before)
            return before;
        const sheet = ledger.blame('sheet', () => readSheet(text, ledger.style, { oneWay, kept: ONE.sub(shrinkage) }), (says) => (fabric === undefined ? says : say('sheetOfFabric', { fabric, says })));
        const { sold } = sheet;
        if (sold)
            ledger.notes.push(...selvagesOf(most(sold.width, sold.length), ledger.style));
        known.set(text, sheet);
        return sheet;
    };
    const own = written ? sheetOf(written) : undefined;
    const of = (fabric) => {
        const letter = fabric || (Array.isArray(letters) ? textOf(letters[0]) : '');
        const text = own ? '' : entryOf(sheets, letter);
        return own ?? (text ? sheetOf(text, letter) : undefined);
    };
    return { own, of };
};
/** A sheet as the cloth that a plan is made on. */
const onSheet = ({ width, length }) => ({
    width,
    height: length,
});
/** A number of sheets to buy. */
const sheetsToBuy = ({ kind, sold, length }, count) => new Purchase(length.mul(count), exact(count), 'sheet', say('sheets', { count, kind, size: sold }));
/** Whether two sheets are the same, after the wash too. */
const isSameSheet = (a, b) => a.kind === b.kind && a.width.equals(b.width) && a.length.equals(b.length);
/** Whether a shop sells two sheets as the same, before the wash. */
const isSoldAs = (a, b) => a.kind === b.kind &&
    (!a.sold || !b.sold || (a.sold.width.equals(b.sold.width) && a.sold.length.equals(b.sold.length)));
/** A sheet as cloth, in its size after the wash. */
const clothOfSheet = ({ width }) => ({
    width: inches(width),
    sold: inches(width),
    kept: ONE,
    washed: (length) => length,
    toBuy: (length) => length,
});

export { clothOfSheet, isSameSheet, isSoldAs, onSheet, readSheet, sheetsOf, sheetsToBuy };
