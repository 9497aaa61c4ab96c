import { clothOf } from '../../ledger/cloth.js';
import { textOf, isBlank } from '../../ledger/field.js';
import { Ledger } from '../../ledger/ledger.js';
import { sayOfPlan } from '../../ledger/planning.js';
import { allOf, enoughFor, Cut } from '../../ledger/purchase.js';
import { inches, count, total } from '../../ledger/quantity.js';
import { costOf, countedIn, buyCloth, spareOf, sayOfShop, cutFor } from '../../ledger/shop.js';
import { laidOut, stacked } from '../../ledger/strips.js';
import { ownCloth } from '../../ledger/widths.js';
import { ONE, exact, ZERO, toMark, sum } from '../../measure/exact.js';
import { isMessage } from '../../measure/message.js';
import { toPriced } from '../../measure/shop.js';
import { canBeCut } from '../../planner/check.js';
import { planCloth } from '../../planner/plan.js';
import { PATCHES } from '../../trade/patches.js';
import { readCutList } from './cut-list.js';
import { noteFolds } from './folds.js';
import { cuttingFields, say } from './shape.js';
import { sheetOf, sheetsToBuy } from './sheets.js';

/**
 * Plans a cut list: for each fabric the strips to cut, what comes from each, and the cloth or sheets to buy. Cuts run edge
 * to edge; every plan is checked before it is given back.
 */
const reckon = (given = {}, plan = planCloth) => {
    const input = given ?? {};
    const ledger = new Ledger(cuttingFields, input);
    return ledger.finish(() => {
        const { list, mark, shrinkage, seam, oneWay } = ledger.values;
        ledger.given('list', 'sheet');
        const listed = ledger.blame('list', () => readCutList(list, { style: ledger.style, mark, seam }));
        const sheet = sheetOf(ledger, ONE.sub(shrinkage));
        const cloth = sheet ? clothOfSheet(sheet) : clothOf(ledger);
        ledger.given('oneWay', 'seam', 'ruler', 'mat', 'mark', 'shrinkage', 'increment', 'price', 'currency');
        const letters = [...new Set(listed.map(({ fabric }) => fabric))];
        const job = { ledger, input, plan, sheet, cloth, isOne: letters.length === 1 };
        const fabrics = letters.map((letter) => planFabric(job, letter, listed.filter(({ fabric }) => fabric === letter)));
        noteMarks(ledger, listed);
        noteFolds(ledger, fabrics);
        ledger.notes.push(...cautionsOf(input.caution));
        return {
            ...boughtFor(job, fabrics),
            layout: fabrics[0]?.layout ?? [],
            fabrics,
            cuts: fabrics.flatMap(({ pieces }) => pieces),
            summary: summaryOf(job, fabrics),
            used: { ...(sheet ? {} : { cloth }), sheet, oneWay },
        };
    });
};
/** A sheet as cloth, in its size after the wash. */
const clothOfSheet = ({ width }) => ({
    width: inches(width),
    sold: inches(width),
    kept: ONE,
    washed: (length) => length,
    toBuy: (length) => length,
});
/** The width of a fabric after the wash, and as sold. */
const widthOf = ({ ledger, input, sheet, cloth }, fabric) => {
    const { widths, usualWidth } = input;
    const written = widths && Object.hasOwn(widths, fabric) && !isBlank(widths[fabric]) ? widths[fabric] : usualWidth;
    const own = sheet || !fabric ? undefined : written;
    return ownCloth(ledger, { width: cloth.width.value, kept: cloth.kept }, own, (says) => say('widthOfFabric', { fabric, says }));
};
/** Plans one fabric's pieces. */
const planFabric = (job, fabric, listed) => {
    const { ledger, sheet, cloth } = job;
    const { increment, price } = ledger.values;
    const { width, sold } = widthOf(job, fabric);
    const [step] = increment.sizes;
    // If the shopping list adds this cloth to that of other parts, a saving of less than a step counts too.
    const inSteps = increment.sizes.length === 1 && !ledger.input.shared;
    const on = { width, height: sheet?.length, step: inSteps ? step?.mul(cloth.kept) : undefined };
    const planned = planFor(job, listed, on);
    const laid = laidOut(planned, on, listed.map(({ cutAs }) => cutAs), listed.map(({ kind }) => PATCHES[kind].each));
    const buy = buyFor(job, fabric, planned, laid);
    const amount = sheet ? exact(planned.count) : toPriced(buy.inches, increment);
    const cost = price && ledger.paid(amount.mul(price));
    return {
        ...laid,
        fabric,
        need: sheet ? ZERO : planned.length.div(cloth.kept),
        sheets: sheet && planned.count,
        buy,
        cost: cost?.amount,
        sold: sheet ? undefined : sold,
        pieces: listed.map((piece) => cutOf(piece, fabric)),
        used: { cost, cuts: listed.map((piece) => cutOf(piece)) },
    };
};
/** How to cut these pieces. Refuses if that is not possible, or not known yet. */
const planFor = ({ ledger, plan }, listed, on) => {
    const turn = !ledger.values.oneWay;
    const pieces = listed.map(({ width, length, count }) => ({ width, height: length, count, turn }));
    const planned = plan(pieces, on);
    if (typeof planned === 'number')
        return ledger.refuse('list', sayOfPlan('planning', { done: planned }));
    if (!planned.ok) {
        const { problem: says } = planned;
        const piece = listed[planned.piece ?? -1];
        return ledger.refuse('list', piece ? say('ofPiece', { piece: piece.piece, size: piece, says }) : says);
    }
    return canBeCut(pieces, on, planned) ? planned : ledger.refuse('list', sayOfPlan('unsound'));
};
/** What to buy for a fabric's plan, with its rows. */
const buyFor = ({ ledger, sheet, cloth, isOne }, fabric, { count: sheets, exact: isLeast }, { strips, width }) => {
    const label = say('fabricName', { fabric });
    const stack = stacked(strips);
    if (sheet) {
        const room = count(sheets).times(inches(sheet.length));
        return ledger.row(`fabric-${fabric}`, sheetsToBuy(sheet, sheets), {
            label,
            how: say('stripsOnSheets', { width, strips: stack, room, isLeast }),
            from: ['list', 'sheet', 'oneWay'],
        });
    }
    const need = cloth.toBuy(stack);
    const across = width.equals(cloth.width.value) ? cloth.width : inches(width);
    const about = {
        how: say('stripsAcross', { width: across, need, isLeast }),
        from: ['list', 'fabricWidth', 'oneWay'],
    };
    if (isOne)
        return buyCloth(ledger, need, about).buy;
    ledger.row(`fabric-${fabric}`, need, { label, ...about });
    const { increment } = ledger.values;
    const buy = enoughFor(need.value, increment);
    if (!ledger.input.shared)
        for (const says of spareOf(need.value, buy.inches, increment))
            ledger.note(sayOfShop('about', { what: label, says }));
    return buy;
};
/** A line of the cut list. It names its fabric if one is given. */
const cutOf = ({ piece, kind, count, width, length }, fabric = '') => {
    const called = kind === 'rectangle' ? piece : say('cutUp', { piece, kind });
    return new Cut(count, fabric ? say('ofFabric', { fabric, piece: called }) : called, width, length);
};
/** What all fabrics take together. If there is only one fabric, its cloth has all rows already. */
const boughtFor = ({ ledger, sheet, isOne }, fabrics) => {
    const { increment } = ledger.values;
    const { price } = ledger.inputs;
    const all = fabrics.reduce((all, { sheets = 0 }) => all + sheets, 0);
    const buy = sheet
        ? sheetsToBuy(sheet, all)
        : allOf(fabrics.map(({ buy }) => buy), increment);
    if (price && (sheet || !isOne))
        costOf(ledger, sheet ? allSheets(fabrics) : countedIn(cutForAll(ledger, fabrics), increment), buy, price, ['list', 'price']);
    const need = sum(fabrics.map(({ need }) => need));
    return { buy, fabric: need, spare: sheet ? ZERO : buy.inches.sub(need), sheets: sheet && all };
};
/** The sheets in the rows of all fabrics. */
const allSheets = (fabrics) => total(fabrics.map(({ fabric, sheets = 0 }) => count(sheets).inRow(`fabric-${fabric}`)));
/** The lengths that the shop cuts for the rows of all fabrics. */
const cutForAll = (ledger, fabrics) => total(fabrics.map(({ fabric, need }) => cutFor(ledger, inches(need).inRow(`fabric-${fabric}`))));
const summaryOf = ({ sheet, isOne }, fabrics) => {
    const [first] = fabrics;
    if (sheet || !isOne || !first)
        return say('boughtEach', { fabrics, size: sheet && !sheet.sold ? sheet : undefined });
    const { need, width, pieces } = first;
    return say('piecesFrom', { count: pieces.reduce((all, { count }) => all + count, 0), need, width });
};
/** The most examples that a person reads. */
const MOST_NAMED = 6;
/** Says which sizes are between two marks of the ruler, and how they are cut. */
const noteMarks = (ledger, listed) => {
    const { mark } = ledger.values;
    const between = new Map(listed.flatMap(({ between }) => between).map((side) => [side.toFraction(), side]));
    const sizes = [...between.values()].slice(0, MOST_NAMED);
    if (sizes.length)
        ledger.note(say('betweenMarks', {
            sizes: sizes.map((written) => ({ written, cut: toMark(written, mark) })),
            areMore: between.size > MOST_NAMED,
        }));
};
/** What the page has to say about this list. */
const cautionsOf = (caution) => {
    if (Array.isArray(caution))
        return caution.flatMap(cautionsOf);
    if (isMessage(caution))
        return [caution];
    const text = textOf(caution);
    return text ? [say('caution', { text })] : [];
};

export { reckon };
