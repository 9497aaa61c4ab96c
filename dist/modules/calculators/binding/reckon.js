import { clothOf } from '../../ledger/cloth.js';
import { textOf } from '../../ledger/field.js';
import { Ledger } from '../../ledger/ledger.js';
import { usualLength } from '../../ledger/lengths.js';
import { count, inches } from '../../ledger/quantity.js';
import { most, ZERO } from '../../measure/exact.js';
import { BINDING_STRIP } from '../../trade/conventions.js';
import { cutBias } from './bias.js';
import { fromFatQuarters } from './fat-quarters.js';
import { withLossRow } from './job.js';
import { bindingFields, say } from './shape.js';
import { cutStraight } from './straight.js';

/**
 * Cloth for a quilt's binding: strips across the cloth, joined end to end, or squares for continuous bias. It also gives the same
 * binding from fat quarters.
 */
const reckon = (input = {}) => {
    const ledger = new Ledger(bindingFields, input);
    const { perimeter, stripWidth, finished, cut, join } = ledger.values;
    if (!perimeter)
        ledger.require('width', 'length');
    return ledger.finish(() => {
        ledger.given('width', 'length', 'perimeter');
        const around = wayRound(ledger);
        ledger.given('allowance');
        const need = ledger.row('need', around.plus(ledger.inputs.allowance));
        const isBias = cut === 'bias';
        if (perimeter && !isBias)
            ledger.note(say('curvedEdge'));
        ledger.given('stripWidth', 'finished', 'fold', 'thickness', 'mark');
        const strip = stripOf(ledger);
        if (stripWidth && finished)
            ledger.note(say('stripWidthUsed'));
        const cloth = clothOf(ledger);
        ledger.given();
        const isDiagonal = isBias || join === 'diagonal';
        const loss = isDiagonal ? strip.strip : ledger.inputs.seam.times(2);
        const bare = { ledger, need, ...strip, cloth, isDiagonal, loss };
        // One bias square has no join.
        const job = isBias ? bare : withLossRow(bare);
        return {
            ...(isBias ? cutBias(job) : cutStraight(job)),
            length: need.value,
            stripWidth: strip.strip.value,
            fatQuarters: fromFatQuarters(job),
            used: { cloth, isDiagonal, loss: loss.value, edge: edgeOf(ledger, strip.strip) },
        };
    });
};
/** The distance round the quilt: as somebody measured it, or from its sides. */
const wayRound = (ledger) => {
    const { perimeter } = ledger.inputs;
    if (perimeter)
        return ledger.measurable('around', perimeter, { how: say('asMeasured', { perimeter }) });
    const [width, length] = [ledger.needed('width'), ledger.needed('length')];
    return ledger.measurable('around', count(2).times(width.plus(length)));
};
/** How wide a strip is cut: as given, or from the finished width, or the usual width. */
const stripOf = (ledger) => {
    const { stripWidth, finished } = ledger.inputs;
    if (stripWidth)
        return { strip: writtenStrip(ledger, stripWidth), stripInput: 'stripWidth' };
    if (finished)
        return { strip: stripShowing(ledger, finished), stripInput: 'finished' };
    const usual = inches(usualLength(BINDING_STRIP, ledger.style)).upTo(ledger.inputs.mark);
    return { strip: ledger.row('strip', usual, { how: say('usualWidth') }), stripInput: 'fabricWidth' };
};
/** A width between two marks of the ruler is cut on the upper one, and takes that much cloth. */
const writtenStrip = (ledger, stripWidth) => {
    const { mark } = ledger.inputs;
    const strip = stripWidth.upTo(mark);
    if (strip.value.equals(stripWidth.value))
        return stripWidth;
    ledger.note(say('betweenMarks', { text: textOf(ledger.input.stripWidth).trim(), strip: strip.value }));
    return ledger.row('strip', strip, { how: say('upToMark', { stripWidth, mark: ledger.stated('mark') }) });
};
/**
 * Double-fold has two layers, and each takes the seam allowance, the front, the quilt's edge and the back. Single-fold has one layer,
 * with an edge turned under. So many finished widths and edges of the quilt make a strip.
 */
const IN_STRIP = { double: { widths: 6, edges: 2 }, single: { widths: 4, edges: 1 } };
/** How wide a strip finishes on the front. */
const edgeOf = ({ values: { finished, stripWidth, fold, thickness } }, strip) => {
    if (finished && !stripWidth)
        return finished;
    const { widths, edges } = IN_STRIP[fold];
    return most(ZERO, strip.value.sub(thickness.mul(edges)).div(widths));
};
/** The strip for a finished width. */
const stripShowing = (ledger, finished) => {
    const { thickness, mark } = ledger.inputs;
    const { widths, edges } = IN_STRIP[ledger.values.fold];
    const whole = finished.times(widths).plus(thickness.times(edges));
    const strip = whole.onMark(mark);
    const how = say('cutOnMark', { whole, cut: strip.value });
    return ledger.row('strip', strip, { how, from: ['fold', 'mark'] });
};

export { reckon };
