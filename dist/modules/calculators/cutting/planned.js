import { textOf, isBlank } from '../../ledger/field.js';
import { sayOfPlan } from '../../ledger/planning.js';
import { allOf, enoughFor, Cut } from '../../ledger/purchase.js';
import { count, inches, total } from '../../ledger/quantity.js';
import { refuse } from '../../ledger/refusal.js';
import { naming, costOf, countedIn, buyCloth, spareOf, sayOfShop, cutFor } from '../../ledger/shop.js';
import { laidOut, stacked } from '../../ledger/strips.js';
import { ownCloth } from '../../ledger/widths.js';
import { toMark, sum, ZERO, exact } from '../../measure/exact.js';
import { isMessage } from '../../measure/message.js';
import { toPriced } from '../../measure/shop.js';
import { canBeCut } from '../../planner/check.js';
import { PATCHES } from '../../trade/patches.js';
import { isSameSheet, sheetsToBuy, onSheet } from './sheets.js';
import { say } from './plan-shape.js';

/** The letters of a list's fabrics, in its order. */
const lettersOf = (listed) => [
    ...new Set(listed.map(({ fabric }) => fabric)),
];
/** The job of a list of these fabrics. */
const jobFor = (about, letters) => {
    const hasCloth = letters.some((letter) => !about.sheets.of(letter));
    return { ...about, isOne: letters.length === 1, hasCloth };
};
/** Plans the pieces of each fabric. */
const planFabrics = (job, listed) => lettersOf(listed).map((letter) => planFabric(job, letter, listed.filter(({ fabric }) => fabric === letter)));
/** The width of a fabric after the wash, and as sold. */
const widthOf = ({ ledger, input, sheets, cloth }, fabric) => {
    const sheet = sheets.of(fabric);
    if (sheet)
        return { width: sheet.width, sold: sheet.width };
    const { widths, usualWidth } = input;
    const written = widths && Object.hasOwn(widths, fabric) && !isBlank(widths[fabric]) ? widths[fabric] : usualWidth;
    const own = fabric ? written : undefined;
    return ownCloth(ledger, { width: cloth.width.value, kept: cloth.kept }, own, (says) => say('widthOfFabric', { fabric, says }));
};
/** The cloth of one fabric, to plan on, and its usable width as sold. */
const clothFor = (job, fabric) => {
    const { ledger, sheets, cloth } = job;
    const { increment } = ledger.values;
    const { width, sold } = widthOf(job, fabric);
    const sheet = sheets.of(fabric);
    if (sheet)
        return { on: onSheet(sheet), sold };
    const [step] = increment.sizes;
    // If the shopping list adds this cloth to that of other parts, a saving of less than a step counts too.
    const inSteps = increment.sizes.length === 1 && !ledger.input.shared;
    return { on: { width, step: inSteps ? step?.mul(cloth.kept) : undefined }, sold };
};
const piecesOf = ({ turn }, listed) => listed.map(({ width, length, count }) => ({ width, height: length, count, turn }));
/**
 * How much cloth, or how many sheets, these pieces of a fabric would take. Undefined if they cannot be cut from it, or if it is not
 * known yet.
 */
const needOf = (job, fabric, listed) => {
    const { on } = clothFor(job, fabric);
    const pieces = piecesOf(job, listed);
    const planned = job.plan(pieces, on);
    if (typeof planned === 'number' || !planned.ok || !canBeCut(pieces, on, planned))
        return undefined;
    const sheet = job.sheets.of(fabric);
    return sheet ? sheetsToBuy(sheet, planned.count) : planned.length.div(job.cloth.kept);
};
/** Plans one fabric's pieces. */
const planFabric = (job, fabric, listed) => {
    const { ledger, cloth } = job;
    const sheet = job.sheets.of(fabric);
    const { increment, price } = ledger.values;
    const { on, sold } = clothFor(job, fabric);
    const planned = planFor(job, listed, on);
    const laid = laidOut(planned, on, listed.map(({ cutAs }) => cutAs), listed.map(({ kind }) => PATCHES[kind].each));
    const buy = buyFor(job, fabric, planned, laid);
    const amount = sheet ? exact(planned.count) : toPriced(buy.inches, increment);
    const isPriced = !sheet || !job.hasCloth;
    const cost = price && isPriced ? ledger.paid(amount.mul(price)) : undefined;
    return {
        ...laid,
        fabric,
        need: sheet ? ZERO : planned.length.div(cloth.kept),
        sheets: sheet && planned.count,
        buy,
        cost: cost?.amount,
        sold: sheet ? undefined : sold,
        pieces: listed.map((piece) => cutOf(piece, fabric)),
        used: { cost, cuts: listed.map((piece) => cutOf(piece)), sheet, plan: planned },
    };
};
/** How to cut these pieces. Refuses if that is not possible, or not known yet. */
const planFor = (job, listed, on) => {
    const pieces = piecesOf(job, listed);
    const planned = job.plan(pieces, on);
    if (typeof planned === 'number')
        return refuse(sayOfPlan('planning', { done: planned }), job.source);
    if (!planned.ok) {
        const { problem: says } = planned;
        const piece = listed[planned.piece ?? -1];
        return refuse(piece ? say('ofPiece', { piece: piece.piece, size: piece, says }) : says, job.source);
    }
    return canBeCut(pieces, on, planned) ? planned : refuse(sayOfPlan('unsound'), job.source);
};
/** What to buy for a fabric's plan, with its rows. */
const buyFor = ({ ledger, sheets: { own, of }, cloth, isOne, source, from }, fabric, { count: planned, exact: isLeast }, { strips, width }) => {
    const label = say('fabricName', { fabric });
    const stack = stacked(strips);
    const sheet = of(fabric);
    if (sheet) {
        const room = count(planned).times(inches(sheet.length));
        return ledger.row(`fabric-${fabric}`, sheetsToBuy(sheet, planned), {
            label,
            how: say('stripsOnSheets', { width, strips: stack, room, isLeast }),
            from: [source, ...(own ? ['sheet'] : []), ...from],
        });
    }
    const need = cloth.toBuy(stack);
    const across = width.equals(cloth.width.value) ? cloth.width : inches(width);
    const about = {
        how: say('stripsAcross', { width: across, need, isLeast }),
        from: [source, 'fabricWidth', ...from],
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
/** Fabrics that are cut from cloth by length, and those that are cut from sheets. */
const apart = (fabrics) => ({
    byLength: fabrics.filter(({ used: { sheet } }) => !sheet),
    onSheets: fabrics.filter(({ used: { sheet } }) => sheet),
});
/** The sheets of all fabrics, together for each kind and size. */
const allSheetsToBuy = (fabrics) => {
    const kinds = [];
    for (const { sheets = 0, used } of fabrics) {
        const { sheet } = used;
        if (!sheet)
            continue;
        const known = kinds.find((one) => isSameSheet(one.sheet, sheet));
        if (known)
            known.count += sheets;
        else
            kinds.push({ sheet, count: sheets });
    }
    return kinds.map(({ sheet, count }) => sheetsToBuy(sheet, count));
};
/** Several amounts as one: the first counts as its number, and its name has them all. */
const together = (first, others) => others.length ? naming([first, ...others], first) : first;
/** What all fabrics take together. If there is only one fabric, its cloth has all rows already. */
const boughtFor = (job, fabrics) => {
    const { ledger } = job;
    const { byLength, onSheets } = apart(fabrics);
    const cloth = allOf(byLength.map(({ buy }) => buy), ledger.values.increment);
    const [first = cloth, ...others] = [...(byLength.length ? [cloth] : []), ...allSheetsToBuy(onSheets)];
    const buy = together(first, others);
    costOfAll(job, byLength.length ? cloth : buy, byLength, onSheets);
    const need = sum(fabrics.map(({ need }) => need));
    return {
        buy,
        fabric: need,
        spare: byLength.length ? cloth.inches.sub(need) : ZERO,
        sheets: onSheets.length ? onSheets.reduce((all, { sheets = 0 }) => all + sheets, 0) : undefined,
    };
};
/** What all fabrics cost together, with the row. A price of cloth by length is no price of a sheet. */
const costOfAll = ({ ledger, isOne, source }, buy, byLength, onSheets) => {
    const { price } = ledger.inputs;
    if (!price)
        return;
    const from = [source, 'price'];
    if (!byLength.length)
        costOf(ledger, allSheets(onSheets), buy, price, from);
    else if (!isOne)
        costOf(ledger, countedIn(cutForAll(ledger, byLength), ledger.values.increment), buy, price, from);
    if (byLength.length && onSheets.length)
        ledger.note(say('priceOfCloth'));
};
/** The sheets in the rows of all fabrics. */
const allSheets = (fabrics) => total(fabrics.map(({ fabric, sheets = 0 }) => count(sheets).inRow(`fabric-${fabric}`)));
/** The lengths that the shop cuts for the rows of all fabrics. */
const cutForAll = (ledger, fabrics) => total(fabrics.map(({ fabric, need }) => cutFor(ledger, inches(need).inRow(`fabric-${fabric}`))));
/** A fabric's sheets, if their own words do not say their size. */
const unsized = ({ used: { sheet } }) => (sheet?.sold ? undefined : sheet);
/** The sheets, if they are all the same, so that their size is said once. */
const sameSheet = (fabrics) => {
    const [first, ...others] = fabrics.flatMap((plan) => unsized(plan) ?? []);
    return first && others.every((sheet) => isSameSheet(sheet, first)) ? first : undefined;
};
const summaryOf = ({ isOne, hasCloth }, fabrics) => {
    const [first] = fabrics;
    if (!hasCloth || !isOne || !first) {
        const each = sameSheet(fabrics);
        return say('boughtEach', {
            fabrics: fabrics.map((plan) => ({
                fabric: plan.fabric,
                buy: plan.buy,
                size: each ? undefined : unsized(plan),
            })),
            each: each && { kind: each.kind, size: each },
        });
    }
    const { need, width, pieces } = first;
    return say('piecesFrom', { count: pieces.reduce((all, { count }) => all + count, 0), need, width });
};
/** The most examples that a person reads. */
const MOST_NAMED = 6;
/** Says which sizes are between two marks of the ruler, and how they are cut. */
const noteMarks = (ledger, listed, mark) => {
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

export { boughtFor, cautionsOf, jobFor, lettersOf, needOf, noteMarks, planFabrics, summaryOf, widthOf };
