import { upTo, most, toMark } from '../measure/exact.js';
import { quoted } from '../measure/parse.js';
import { SEAM, QUILT_THICKNESS, BINDING_ALLOWANCE, BINDING_STRIP } from '../trade/conventions.js';
import { fatQuarters, biasCut, straightCut } from './binding-cuts.js';
import { Book } from './book.js';
import { lengthField, choiceField, optional, readLength, textOf } from './fields.js';
import { quiltFields, shopFields, markField, joinField, clothFields } from './shared.js';

const bindingFields = {
    width: optional(quiltFields.width),
    length: optional(quiltFields.length),
    perimeter: optional(lengthField('Way round, measured', {
        most: '4000 in',
        hint: 'for curved edges, in place of width and length',
        more: true,
    })),
    allowance: lengthField('Corners and closing', {
        initial: BINDING_ALLOWANCE,
        zero: true,
        most: '100 in',
        hint: 'mitres and the closing tails',
    }),
    stripWidth: optional(lengthField('Strip width', { hint: 'as cut; empty for what is usual or what the finished width takes' })),
    finished: optional(lengthField('Finished width', { most: '6 in', hint: 'as it shows on the front; may stay empty' })),
    fold: choiceField('Fold', { double: 'double-fold', single: 'single-fold' }),
    thickness: lengthField('Thickness of the quilt', {
        initial: QUILT_THICKNESS,
        zero: true,
        most: '2 in',
        hint: 'goes into a finished width',
        more: true,
    }),
    ...clothFields,
    cut: choiceField('Cut', { straight: 'across the cloth', bias: 'on the bias' }),
    join: joinField,
    seam: lengthField('Seam', {
        initial: SEAM,
        most: '4 in',
        hint: 'of a straight join, and of the bias tube',
        more: true,
    }),
    ...markField,
    ...shopFields,
};
/**
 * What to cut a strip to, and the row that says so. From the width it is to show, double-fold: two layers, each the seam
 * allowance, the front, the quilt's edge and the back. Single-fold: one, with an edge turned under.
 */
const stripOf = (book) => {
    const { stripWidth, finished, fold, thickness, mark } = book.values;
    const label = 'Cut the strips';
    if (!finished || stripWidth) {
        const written = stripWidth ?? readLength(BINDING_STRIP, book.style);
        // What lies between two marks is cut on the upper one, and takes that much cloth.
        const strip = upTo(written, mark);
        const stripInput = stripWidth ? 'stripWidth' : 'fabricWidth';
        if (stripWidth && strip.equals(stripWidth))
            return { strip, stripRow: 'stripWidth', stripInput };
        if (stripWidth)
            book.notes.push(`${quoted(textOf(book.input.stripWidth).trim())} lies between the ruler’s marks: the strips are cut ${book.l(strip)} wide.`);
        book.row('strip', label, strip, stripWidth ? '{stripWidth}, up to a mark of {mark unit}' : 'the usual width');
        return { strip, stripRow: 'strip', stripInput };
    }
    const [widths, edges] = fold === 'double' ? [6, 2] : [4, 1];
    const whole = finished.mul(widths).add(thickness.mul(edges));
    const strip = most(toMark(whole, mark), mark);
    const how = `${widths} × {finished} + ${edges} × {thickness} = ${book.l(whole)}${book.onMark(whole)}`;
    book.row('strip', label, strip, how, ['fold', 'mark']);
    return { strip, stripRow: 'strip', stripInput: 'finished' };
};
/**
 * Cloth for a quilt's binding: strips across the cloth joined end to end, or squares for continuous bias; and the same
 * from fat quarters. Impossible inputs give `errors`, never an exception.
 */
const reckonBinding = (input = {}) => {
    const book = new Book(bindingFields, input);
    if (!book.values.perimeter)
        book.require('width', 'length');
    return book.finish(() => {
        const { width, length, perimeter, allowance, stripWidth, finished, cut, join, seam } = book.values;
        const bias = cut === 'bias';
        book.given('width', 'length', 'perimeter');
        const around = perimeter
            ? book.measurable('around', 'Way round', perimeter, 'as measured', ['perimeter'])
            : book.measurable('around', 'Way round', width.add(length).mul(2), '2 × ({width} + {length}) =');
        book.given('allowance');
        const need = around.add(allowance);
        book.row('need', 'Binding needed', need, '{around} + {allowance} =');
        if (perimeter && !bias)
            book.notes.push('A curved edge needs bias binding: strips cut straight do not bend round it.');
        book.given('stripWidth', 'finished', 'fold', 'thickness', 'mark');
        const strip = stripOf(book);
        if (stripWidth && finished)
            book.notes.push('The strip width is used, not the finished width.');
        const cloth = book.cloth();
        book.given();
        const diagonal = bias || join === 'diagonal';
        const loss = diagonal ? strip.strip : seam.mul(2);
        const job = { book, need, ...strip, ...cloth, diagonal, loss };
        return {
            ...(bias ? biasCut(job) : straightCut(job)),
            length: need,
            stripWidth: job.strip,
            fatQuarters: fatQuarters(job),
        };
    });
};

export { bindingFields, reckonBinding };
