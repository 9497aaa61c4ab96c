import { clothOf } from '../../ledger/cloth.js';
import { joined } from '../../ledger/joined.js';
import { Ledger } from '../../ledger/ledger.js';
import { usualLength } from '../../ledger/lengths.js';
import { Cut } from '../../ledger/purchase.js';
import { count } from '../../ledger/quantity.js';
import { buyCloth } from '../../ledger/shop.js';
import { least, most, upTo } from '../../measure/exact.js';
import { ownCloths } from '../../ledger/widths.js';
import { fewest } from '../../planner/joins.js';
import { RULER_MARK } from '../../trade/conventions.js';
import { sleeveFields, say } from './shape.js';

/** Cloth for the sleeve that a quilt hangs by: a strip across its top edge, hemmed at both ends and sewn to a tube. And for a label. */
const reckon = (input = {}) => {
    const ledger = new Ledger(sleeveFields, input);
    return ledger.finish(() => {
        ledger.given('width', 'stripWidth', 'short', 'hem');
        const { width, stripWidth, short, seam, hem } = ledger.inputs;
        const finished = ledger.row('finished', width.minus(short.times(2)));
        if (finished.value.lte(0))
            ledger.refuse('width', say('tooNarrow', { width: width.value }));
        // Each end is turned twice.
        const cutLength = ledger.row('cutLength', finished.plus(hem.times(4)));
        const flat = stripWidth.minus(seam.times(2));
        if (flat.value.lte(0))
            ledger.refuse('stripWidth', say('seamsTakeAll', { strip: stripWidth.value }));
        const depth = ledger.row('depth', flat.over(2));
        const cloth = clothOf(ledger);
        ledger.given();
        const strips = stripsFor(ledger, cutLength, cloth);
        const label = labelOf(ledger, cloth);
        const isBeside = !!label && fitsBeside(label.cut, strips, cloth.width.minus(cutLength), stripWidth);
        // A worksheet lays the label out by itself, and looks by itself what the backing leaves.
        if (!ledger.input.shared)
            ledger.notes.push(...(isBeside ? [say('labelBeside')] : []), say('seeLeftover'));
        const many = strips.value.valueOf();
        const forStrips = strips.times(stripWidth);
        const piece = say(many > 1 ? 'stripToJoin' : 'sleeveStrip');
        const long = many > 1 ? cloth.width : cutLength;
        const cut = new Cut(many, piece, stripWidth.value, long.value);
        return {
            ...buyCloth(ledger, cloth.toBuy(label && !isBeside ? forStrips.plus(label.along) : forStrips)),
            finished: { width: finished.value, length: depth.value },
            strips: many,
            summary: say('summary', {
                strips: many,
                finished: finished.value,
                depth: depth.value,
                label: label?.finished,
            }),
            cuts: [cut, ...(label ? [label.cut] : [])],
            used: {
                cloth,
                quilt: width.value,
                short: short.value,
                strip: { cut, need: cloth.toBuy(forStrips).value },
                ways: waysFor(ledger, cutLength.value, many),
                label: label && { ...label, need: cloth.toBuy(label.along).value },
            },
        };
    });
};
/** The label's rows, and how much of the cloth's length it takes. It is turned under by the seam allowance all round. */
const labelOf = (ledger, sleeveCloth) => {
    const [across, down] = ledger.values.label ?? [];
    if (!across || !down)
        return undefined;
    const { seam, width } = ledger.inputs;
    const cloth = ownCloths(ledger, sleeveCloth)(1);
    const cutOf = (id, at, side) => ledger.row(id, ledger.entry('label', at, side).plus(seam.times(2)));
    const [wide, long] = [cutOf('labelWidth', 0, across), cutOf('labelLength', 1, down)];
    const widest = least(width.value, cloth.width);
    if (wide.value.gt(widest) || long.value.gt(widest))
        ledger.refuse('label', say('labelTooWide', { most: widest, room: widest.sub(seam.value.mul(2)) }));
    return {
        finished: { width: across, length: down },
        cut: new Cut(1, say('labelPiece'), wide.value, long.value),
        along: wide.value.lt(long.value) ? wide : long,
        cloth,
    };
};
/** Whether a label can be cut from the end of the only strip. */
const fitsBeside = ({ width, length }, strips, end, strip) => strips.value.equals(1) &&
    least(width, length).lte(least(end.value, strip.value)) &&
    most(width, length).lte(most(end.value, strip.value));
/** Nobody joins more strips from what is left over. */
const MOST_JOINED = 6;
/** The ways to cut the sleeve from what other parts leave, with at most one join more than strips across the cloth have. */
const waysFor = ({ values, style }, need, strips) => {
    const mark = usualLength(RULER_MARK, { units: style.units });
    return Array.from({ length: Math.min(strips + 1, MOST_JOINED) }, (_, joins) => {
        const count = joins + 1;
        const each = need.add(values.seam.mul(2 * joins)).div(count);
        const length = joins ? upTo(each, mark) : each;
        const piece = say(joins ? 'stripToJoin' : 'sleeveStrip');
        return [{ piece, width: values.stripWidth, length, count, turn: true }];
    });
};
/** The strips across the cloth, joined straight, that reach the length of the sleeve. */
const stripsFor = (ledger, need, { width }) => {
    const { seam } = ledger.inputs;
    const strips = fewest(need.value, width.value, seam.value.mul(2));
    if (!strips)
        return ledger.refuse('fabricWidth', say('joinsTakeAll', { cloth: width.value }));
    const reach = joined(strips, width, count(2 * strips - 2).times(seam));
    return ledger.row('strips', count(strips), { how: say('stripsReach', { reach, need }) });
};

export { reckon };
