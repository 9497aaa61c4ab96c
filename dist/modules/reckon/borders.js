import { sum, toMark, most, wholeUp } from '../measure/exact.js';
import { toUnit } from '../measure/units.js';
import { SEAM } from '../trade/conventions.js';
import { Book } from './book.js';
import { GrowingTop } from './border-lengths.js';
import { bestPlan, borderPlans, count, lotsOf } from './border-strips.js';
import { lengthField, choiceField, optional, sizeField, choicesField, lengthsField, sideField } from './fields.js';
import { shopFields, markField, joinField, clothFields, plural } from './shared.js';
import { ownCloths } from './widths.js';

const bordersFields = {
    width: sideField('Top width', { hint: 'finished, without borders' }),
    length: sideField('Top length', { hint: 'finished, without borders' }),
    borders: optional(lengthsField('Border width', { hint: 'finished; from the inside out', each: 'Border' })),
    corners: choicesField('Corners', {
        'sides-first': 'sides first',
        'ends-first': 'ends first',
        squares: 'corner squares',
        mitred: 'mitred',
    }),
    target: optional(sizeField('Wanted size', { hint: 'reached with one more border' })),
    ...clothFields,
    grain: choiceField('Strips cut', { across: 'across the cloth', along: 'along the cloth' }),
    join: joinField,
    seam: lengthField('Seam allowance', { initial: SEAM, zero: true, most: '2 in' }),
    ...markField,
    ...shopFields,
};
const PIECES = { side: 'side', end: 'top or bottom', corner: 'corner' };
/** A corner style for each border, or one for all. A reader may have added a border, or taken one away. */
const cornersFor = (book, many) => {
    const { corners } = book.values;
    const { length } = corners;
    if (length === 1 || length === many)
        return corners;
    const last = corners[Math.min(length, many) - 1];
    book.notes.push(length < many
        ? `There are ${length} corner styles for ${plural(many, 'border')}: the others have corners like border ${length}. Choose another in its row.`
        : `There are ${length} corner styles for ${plural(many, 'border')}: the last ${length - many > 1 ? `${length - many} are` : 'is'} not used.`);
    return Array.from({ length: many }, (_, at) => corners[at] ?? last);
};
/**
 * Borders round a top: what to cut for each, from how many strips, the cloth for all of them, and the finished size. A
 * length typed over a reckoned one changes all that follows. Impossible inputs give `errors`, never an exception.
 */
const reckonBorders = (input = {}) => {
    const book = new Book(bordersFields, input);
    return book.finish(() => {
        const { l } = book;
        const { target, grain, seam, mark } = book.values;
        const listed = book.values.borders ?? [];
        const many = listed.length + (target ? 1 : 0);
        if (!many)
            book.refuse('borders', 'Write the widths of the borders from the inside out, like 2, 4 1/2, or a wanted size, like 60 x 80.');
        const corners = (book.values.corners = cornersFor(book, many));
        book.given('width', 'length', 'borders', 'target', 'corners');
        const cloth = { book, ...book.cloth() };
        const clothAt = ownCloths(book, cloth);
        book.given('grain', 'join', 'seam');
        const top = new GrowingTop(book);
        /** The last border, as wide as the wanted size takes; it may be nothing on an axis that has its size. */
        const lastWidths = (wanted) => {
            const { side, end } = top.lacking(wanted);
            const roomy = ({ value }) => wholeUp(toUnit(value, book.style.units)) + 4;
            const larger = `Write a larger size, like ${roomy(top.width)} x ${roomy(top.length)}.`;
            const same = side.value.equals(end.value);
            const nothing = same && side.value.equals(0);
            if (side.value.lt(0) || end.value.lt(0) || (nothing && !listed.length))
                book.refuse('target', `${listed.length ? `With ${plural(listed.length, 'border')}` : 'Without a border'} it is ${book.size(top.width.value, top.length.value)} already. ${larger}`);
            const each = `${l(side.value)} at each side and ${l(end.value)} at top and at bottom`;
            if (!same && corners.at(-1) === 'mitred')
                book.refuse('corners', `The wanted size takes ${each}, but a mitred border is as wide all round. Write squares or sides-first.`);
            if (nothing)
                book.notes.push('The wanted size is reached without a last border.');
            else if (!same)
                book.notes.push(`To reach the wanted size the last border is ${each}.`);
            return { side, end };
        };
        const noPlan = (number, lots, width) => {
            const wide = l(most(...lots.map(({ width }) => width)));
            const across = l(width);
            if (grain === 'along')
                return book.refuse('grain', `Border ${number} is cut ${wide} wide, too wide to be cut along cloth of ${across}. Write across.`);
            if (width.lte(seam.mul(2)))
                return book.refuse('fabricWidth', `Strips ${across} long are too short to be joined. Write wider cloth, like 40 in.`);
            return book.refuse('join', `Joined at 45°, strips ${wide} wide and ${across} long get no longer. Write straight.`);
        };
        const shown = ({ plan, strips, joins, fabric }) => ({
            plan,
            strips,
            joins,
            fabric,
            buy: book.toBuy(fabric),
        });
        const clothHow = ({ fabricHow }) => `${cloth.washed && fabricHow.includes('+') ? `(${fabricHow})` : fabricHow}${cloth.washed} =`;
        const borders = [];
        const cuts = [];
        const needs = [];
        const allLots = [];
        const widths = [];
        const add = (finished) => {
            const number = borders.length + 1;
            const style = corners[number - 1] ?? corners[0];
            const { pieces, side, end } = top.sew(number, style, finished);
            if (!pieces.length)
                return;
            const lots = lotsOf(pieces, mark);
            allLots.push(...lots);
            const own = clothAt(borders.length);
            widths.push(own.width);
            const isUsual = own.width.equals(cloth.cloth);
            const plans = borderPlans(lots, isUsual ? cloth : { ...cloth, cloth: own.width, clothRow: book.n(own.width) });
            const best = bestPlan(plans, grain) ?? noPlan(number, lots, own.width);
            const sizes = pieces.flatMap(({ from }) => from);
            const id = `border${number}Strips`;
            const joins = best.joins ? `, ${plural(best.joins, 'join')}` : '';
            book.row(id, `Border ${number}, strips`, `${best.strips}${joins}`, best.how, [
                ...new Set(sizes),
                'grain',
                'join',
            ]);
            needs.push({ how: clothHow(best), from: [id, ...sizes] });
            const same = side.value.equals(end.value);
            for (const { piece, count, length, width } of pieces) {
                const name = piece === 'corner' && same ? 'corner square' : PIECES[piece];
                cuts.push(book.cut(count, `border ${number}, ${name}`, toMark(width, mark), toMark(length, mark)));
            }
            borders.push({
                finished: side.value,
                finishedEnds: same ? undefined : end.value,
                corners: style,
                cloth: own,
                pieces: pieces.map(({ piece, count, length, width }) => ({ piece, count, length, width })),
                ...shown(best),
                plans: plans.map(shown),
            });
        };
        listed.forEach((value, at) => {
            const width = { value, words: `{borders ${at}}` };
            add({ side: width, end: width });
        });
        if (target)
            add(lastWidths(target));
        book.given();
        const needRow = (_, at) => `border${at + 1}Fabric`;
        const [first, ...more] = needs;
        if (more.length)
            needs.forEach(({ how, from }, at) => book.row(needRow(how, at), `Border ${at + 1}, cloth`, borders[at].fabric, how, from));
        const apart = sum(borders.map(({ fabric }) => fabric));
        const isOneCloth = widths.every((width) => width.equals(cloth.cloth));
        // Along the cloth, pieces of several borders may lie side by side.
        const together = more.length && grain === 'along' && isOneCloth
            ? bestPlan(borderPlans(allLots, cloth), grain)
            : undefined;
        const bought = together?.fabric.lt(apart) === true
            ? book.buy(together.fabric, `all of them, ${together.how}: ${clothHow(together)}`, needs.map(needRow))
            : book.buy(apart, more.length ? `${needs.map((need, at) => `{${needRow(need, at)}}`).join(' + ')} =` : first.how, more.length ? [] : first.from);
        if (more.length && isOneCloth && !book.input.shared)
            book.notes.push(`This is for all borders from one cloth. From different cloths buy ${borders.map(({ buy }, at) => `${buy.text} for border ${at + 1}`).join(', ')}.`);
        book.notes.push('Measure your own top through the middle, both ways, before you cut, and write that over the reckoned lengths.');
        const finished = { width: top.width.value, length: top.length.value };
        const joins = count(borders, 'joins');
        return {
            ...bought,
            finished,
            summary: `${plural(count(borders, 'strips'), 'strip')} ${grain} the cloth, ${joins ? plural(joins, 'join') : 'no join'}; with ${more.length ? `${borders.length} borders` : 'its border'} the top is ${book.size(finished.width, finished.length)}.`,
            borders,
            cuts,
        };
    });
};

export { bordersFields, reckonBorders };
