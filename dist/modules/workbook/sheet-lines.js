import { sheetsToBuy, isSoldAs, readSheet } from '../calculators/cutting/sheets.js';
import { unlessRefused } from '../ledger/refusal.js';
import { exact, ONE, ZERO } from '../measure/exact.js';
import { textOfLine } from './lines.js';
import { sheetsLeftToBuy } from './own-sheets.js';
import { titlesOf } from './parts.js';
import { poolsOf, planPool } from './pool.js';
import { priceOf } from './prices.js';
import { say } from './sayings.js';

/** The price of one sheet: that of the fabric if it is bought in these sheets, or the first that a part has. */
const priceOfSheet = (ledger, { sheet, oneWay, parts }, fabric) => {
    const isOfFabric = !!fabric?.sheet &&
        unlessRefused(() => isSoldAs(readSheet(fabric.sheet, ledger.style, { oneWay, kept: ONE }), sheet), () => false);
    const own = isOfFabric
        ? priceOf(ledger, { written: fabric.price }, say('priceOfFabric', { letter: fabric.letter }))
        : undefined;
    return (own ??
        parts.map(({ price, title }) => priceOf(ledger, price, say('priceOfPart', { title }))).find(Boolean));
};
/** The row of several parts: how many sheets each takes, and all together. */
const rowOf = (ledger, key, label, pool, planned) => {
    const { alone, count } = planned;
    const parts = pool.parts.map(({ when }, at) => ({ title: when, sheets: alone[at] ?? 0 }));
    const how = say('sheetsOfParts', {
        parts,
        alone: alone.reduce((all, sheets) => all + sheets, 0),
        together: count,
    });
    ledger.row(`buy-${key}`, sheetsToBuy(pool.sheet, count), { label, how });
};
/** The joint plan, as it is drawn. */
const togetherOf = (letter, { sheet }, { laid, count, weeks }) => laid && {
    fabric: letter,
    need: ZERO,
    buy: sheetsToBuy(sheet, count),
    pieces: [],
    sheets: count,
    ...laid,
    used: { sheet, isNumbered: !!weeks },
};
/** The line of one pool. */
const lineOf = (ledger, { key, letter }, pool, fabric, plan) => {
    const { parts, sheet } = pool;
    const [first] = parts;
    const what = letter || !first ? say('fabricOf', { letter }) : first.title;
    const cloth = say('clothOf', { what, width: undefined });
    const without = planPool(ledger, pool, plan, cloth);
    const { stock } = fabric ?? {};
    const left = stock?.written ? sheetsLeftToBuy(pool, without, stock, plan) : undefined;
    const planned = left?.planned ?? without;
    const name = fabric?.name ?? '';
    const label = name ? say('clothNamed', { cloth, name }) : cloth;
    if (parts.length > 1)
        rowOf(ledger, key, label, pool, without);
    const missing = left?.buy ?? planned.count;
    const buy = sheetsToBuy(sheet, missing);
    const price = priceOfSheet(ledger, pool, fabric);
    const paid = price && ledger.paid(exact(missing).mul(price));
    const hasOwn = missing < without.count;
    const text = textOfLine(say('toBuy', { buy, width: undefined }), hasOwn, buy);
    const titles = titlesOf(parts);
    return {
        item: {
            title: titles.length === 1 && first ? first.title : say('uses', { titles }),
            fabric: letter,
            name,
            text,
            cost: paid,
            sheets: planned.count,
            parts: parts.map(({ title }, at) => ({ title, sheets: planned.alone[at] ?? 0 })),
            weeks: planned.weeks,
            own: stock && { written: stock.written, isEnough: !missing, plans: left?.own ?? [] },
            together: togetherOf(letter, pool, planned),
            used: { buy, sheet },
        },
        called: letter ? say('itemOf', { item: text, letter }) : text,
        paid,
    };
};
/** The lines of a fabric that is bought in sheets: one for all parts that are cut from the same ones. */
const sheetLinesOf = (ledger, declared, group, plan) => {
    const fabric = declared.find(({ letter }) => letter === group.letter);
    return poolsOf(group.parts).map((pool, at) => lineOf(ledger, { ...group, key: `${group.key} sheets${at || ''}` }, pool, fabric, plan));
};

export { sheetLinesOf };
