import { canBeCut } from '../cutting/check.js';
import { planCloth } from '../cutting/plan.js';
import { ONE, sum, exact, ZERO } from '../measure/exact.js';
import { purchase, toPriced } from '../measure/shop.js';
import { SEAM } from '../trade/conventions.js';
import { MAT, RULER } from '../trade/patches.js';
import { Book } from './book.js';
import { cutListInUnit, writeCutList, readCutList } from './cut-list.js';
import { moneyField, sizeField, lengthField, flagField, sheetField, optional, textOf, isBlank } from './fields.js';
import { noteFolds } from './folds.js';
import { PLANNING } from './planning.js';
import { shopFields, markField, clothFields, plural } from './shared.js';
import { sheetOf, sheets } from './sheets.js';
import { laidOut, UNSOUND, stacked } from './strips.js';
import { ownCloth } from './widths.js';

const cuttingFields = {
    list: optional({
        kind: 'own',
        label: 'Cut list',
        lines: true,
        read: (raw) => raw,
        write: writeCutList,
        marked: cutListInUnit,
        hint: 'fabric | piece | cut size | how many; a line each',
    }),
    sheet: sheetField('Cut from', {
        hint: 'empty for cloth by length; fat-quarter, fat-eighth, or a size like 18 x 20, width first on a one-way print',
    }),
    ...clothFields,
    seam: lengthField('Seam allowance', {
        initial: SEAM,
        zero: true,
        most: '2 in',
        hint: 'what a finished size lacks',
        more: true,
    }),
    oneWay: flagField('One-way print'),
    ruler: lengthField('Ruler, length', { initial: RULER, most: '120 in', more: true }),
    mat: sizeField('Cutting mat', { initial: MAT, more: true }),
    ...markField,
    ...shopFields,
    price: moneyField('Price of a yard, a metre or a sheet'),
};
const widthIn = (widths, fabric) => widths && Object.hasOwn(widths, fabric) && !isBlank(widths[fabric]) ? widths[fabric] : undefined;
/** How wide a fabric is, and how wide it was sold, before a wash. */
const widthOf = (job, fabric) => {
    const { book, input, sheet } = job;
    const own = sheet || !fabric ? undefined : (widthIn(input.widths, fabric) ?? input.usualWidth);
    return ownCloth(book, job, own, `The width of fabric ${fabric}: `);
};
/** How to cut these pieces; refused where that is not possible or not known yet. */
const planFor = ({ book, plan }, listed, on) => {
    const pieces = listed.map(({ width, length, count }) => ({
        width,
        height: length,
        count,
        turn: !book.values.oneWay,
    }));
    const planned = plan(pieces, on);
    if (typeof planned === 'number')
        return book.refuse('list', `${PLANNING}: ${Math.round(planned * 100)} % done.`);
    if (!planned.ok) {
        const piece = listed[planned.piece ?? -1];
        return book.refuse('list', `${piece ? `${piece.piece}, ${book.size(piece.width, piece.length)}: ` : ''}${planned.message}`);
    }
    return canBeCut(pieces, on, planned) ? planned : book.refuse('list', UNSOUND);
};
/** What to buy for a fabric's plan, with its rows. */
const buyFor = ({ book, sheet, kept, washed, isOne }, fabric, width, { length, count, exact: isLeast }, strips) => {
    const { l, n } = book;
    const id = `fabric-${fabric}`;
    const called = fabric ? `Fabric ${fabric}` : 'Cloth';
    const from = ['list', sheet ? 'sheet' : 'fabricWidth', 'oneWay'];
    const less = (than) => isLeast ? `; ${than} would not do` : `; no layout on ${than} was found`;
    if (sheet) {
        const buy = sheets(sheet, count);
        const tall = sum(strips.map(({ count, height }) => exact(height).mul(count)));
        book.row(id, called, buy.text, `strips ${l(width)} long: ${stacked(strips, n)} = ${n(tall)} ≤ ${count} × ${n(sheet.height)} = ${l(sheet.height.mul(count))}${less('fewer')}`, from);
        return buy;
    }
    const need = length.div(kept);
    const how = `strips across cloth of ${l(width)}: ${stacked(strips, n, washed)} = ${l(need)}${less('less')}`;
    if (isOne)
        return book.buy(need, how, from).buy;
    book.row(id, called, need, how, from);
    return book.upToStep(need, `${called}: `).buy;
};
/** As many examples as a person reads. */
const MOST_NAMED = 6;
/** Says which sizes were written between the ruler's marks, and what they are cut. */
const noteMarks = (book, listed) => {
    const between = new Set(listed.flatMap(({ between }) => between).map((side) => book.l(side) + book.onMark(side)));
    const named = [...between].slice(0, MOST_NAMED).join('; ');
    if (named)
        book.notes.push(`Sizes between the ruler’s marks are cut on one of them: ${named}${between.size > MOST_NAMED ? ' …' : '.'}`);
};
/** Plans one fabric's pieces. */
const planFabric = (job, fabric, listed) => {
    const { book, sheet, kept } = job;
    const { increment, price } = book.values;
    const { width, sold } = widthOf(job, fabric);
    // Of what is added to other parts before it is rounded up, less than a step counts too.
    const inSteps = increment.sizes.length === 1 && !book.input.shared;
    const on = {
        width,
        height: sheet?.height,
        step: inSteps ? increment.sizes[0].mul(kept) : undefined,
    };
    const planned = planFor(job, listed, on);
    const laid = laidOut(planned, on, listed.map(({ cutAs }) => cutAs), listed.map(({ each }) => each));
    const buy = buyFor(job, fabric, width, planned, laid.strips);
    return {
        fabric,
        need: sheet ? ZERO : planned.length.div(kept),
        sheets: sheet && planned.count,
        buy,
        cost: price &&
            book.sum((sheet ? exact(planned.count) : toPriced(exact(buy.inches), increment)).mul(price)).amount,
        ...laid,
        sold: sheet ? undefined : sold,
        pieces: listed.map(({ piece, width, length, count, cutUp }) => book.cut(count, [fabric, cutUp ? `${piece}: squares, ${cutUp}` : piece].filter(Boolean).join(' · '), width, length)),
    };
};
/**
 * Plans a cut list: for each fabric the strips to cut, what comes from each, and the cloth or sheets to buy. Cuts run edge
 * to edge; every plan is checked before it is given back. Impossible inputs give `errors`, never an exception.
 */
const reckonCutting = (input = {}, plan = planCloth) => {
    const book = new Book(cuttingFields, input);
    return book.finish(() => {
        const { l } = book;
        const { list, increment, mark, price, shrinkage, seam } = book.values;
        book.given('list', 'sheet');
        const listed = book.blame('list', () => readCutList(list, { style: book.style, mark, seam }));
        const sheet = sheetOf(book, ONE.sub(shrinkage));
        const cloth = sheet ? { cloth: sheet.width, kept: ONE, washed: '' } : book.cloth();
        book.given('oneWay', 'seam', 'ruler', 'mat', 'mark', 'shrinkage', 'increment', 'price', 'currency');
        const letters = [...new Set(listed.map(({ fabric }) => fabric))];
        const isOne = letters.length === 1;
        const job = { ...cloth, book, input: input ?? {}, plan, sheet, isOne };
        const fabrics = letters.map((letter) => planFabric(job, letter, listed.filter(({ fabric }) => fabric === letter)));
        noteMarks(book, listed);
        noteFolds(book, fabrics);
        const caution = textOf(input?.caution);
        if (caution)
            book.notes.push(caution);
        const need = sum(fabrics.map(({ need }) => exact(need)));
        const inches = sum(fabrics.map(({ buy }) => exact(buy.inches)));
        const count = sum(fabrics.map(({ sheets = 0 }) => exact(sheets)));
        const buy = sheet ? sheets(sheet, count.valueOf()) : purchase(inches, increment, book.style.comma);
        // One fabric's cloth has its rows already, its cost among them.
        if (sheet || !isOne)
            book.price(sheet ? count : toPriced(inches, increment), buy.text, price, ['list', 'price']);
        const cuts = fabrics.flatMap(({ pieces }) => pieces);
        const [first] = fabrics;
        return {
            buy,
            fabric: need,
            spare: sheet ? ZERO : inches.sub(need),
            sheets: sheet && count.valueOf(),
            layout: first.layout,
            fabrics,
            cuts,
            summary: sheet || !isOne
                ? `${fabrics.map(({ fabric, buy: { text } }) => `${fabric}${fabric && ': '}${text}`).join('; ')}${sheet && !sheet.size ? ` of ${book.size(sheet.width, sheet.height)}` : ''}.`
                : `${plural(cuts.reduce((all, { count }) => all + count, 0), 'piece')} from ${l(need)} of cloth ${l(exact(first.width))} wide.`,
        };
    });
};

export { cuttingFields, reckonCutting };
