import { sizeForBed, isCrib, sayOfBed } from '../../ledger/bed.js';
import { clothOf } from '../../ledger/cloth.js';
import { Ledger } from '../../ledger/ledger.js';
import { enoughFor } from '../../ledger/purchase.js';
import { count } from '../../ledger/quantity.js';
import { sidesOf } from '../../ledger/quilt.js';
import { buyCloth } from '../../ledger/shop.js';
import { ownCloths } from '../../ledger/widths.js';
import { planCloth } from '../../planner/plan.js';
import { blockChoices } from './choices.js';
import { sashingPieces, settingTriangles } from './pieces.js';
import { Plans, lessOf } from './plans.js';
import { sideOf } from './sides.js';
import { topFields, say } from './shape.js';

/**
 * A top's size from its blocks, with every sashing piece, cornerstone and setting triangle. On point, sashing runs round
 * every block, with cornerstones. `buy` is the cloth for sashing, cornerstones and setting triangles from one cloth. The patches
 * of the blocks are not in it: they belong into a cut list. Until the plan is ready, the cloth is that of separate strips for each
 * kind of piece.
 */
const reckon = (input = {}, plan = planCloth) => {
    const ledger = new Ledger(topFields, input);
    return ledger.finish(() => {
        const wanted = wantedIn(ledger);
        const layout = layoutOf(ledger);
        const { finished, unfinished } = sizesOf(ledger, layout);
        const cloth = clothOf(ledger);
        const plans = new Plans(ledger, plan, cloth);
        const clothAt = ownCloths(ledger, cloth);
        ledger.given('seam', 'mark', 'shrinkage', 'increment', 'price', 'currency');
        const { sashes, stones } = sashingPieces(layout, finished.width, ledger.values);
        const triangles = layout.onPoint ? settingTriangles(ledger) : undefined;
        const kinds = [
            { kind: 'sashing', cuts: sashes, input: 'sashing' },
            { kind: 'cornerstones', cuts: stones, input: 'cornerstones' },
            { kind: 'triangles', cuts: triangles?.cuts ?? [], input: 'block' },
        ];
        if (layout.onPoint && layout.sashing.gt(0) && !layout.frame)
            ledger.note(say('runsRound'));
        const parts = kinds.filter(({ cuts }) => cuts.length).map((kind, at) => partOf(plans, kind, clothAt(at)));
        const haveOneWidth = parts.every((part) => part.cloth.width.equals(cloth.width.value));
        const areOne = parts.length > 1 && haveOneWidth && !ledger.input.apart;
        const { cuts, fabric, strips } = allOf(plans, parts, areOne);
        if (plans.areUnfinished)
            ledger.note(say('mayTakeLess'));
        const bought = buyCloth(ledger, fabric, {
            how: parts.length ? say('stripsAcross', { need: fabric }) : say('onlyBlocks'),
            label: areOne ? say('ifAllFromOne') : undefined,
            from: ['sashing', 'block', 'fabricWidth'],
        });
        const isSaid = parts.length && !ledger.input.shared;
        return {
            ...bought,
            finished,
            unfinished,
            choices: wanted && blockChoices(wanted, sewnIn(ledger, layout)),
            blocks: layout.count,
            pieces: cuts,
            ...triangles?.squares,
            parts,
            strips,
            cuts,
            summary: say('summary', {
                layout,
                finished,
                parts: parts.map(({ part }) => part),
                areOne,
                buy: isSaid ? bought.buy : undefined,
            }),
            used: { cloth, layout },
        };
    });
};
/** The layout of the top, with the row of its blocks. */
const layoutOf = (ledger) => {
    const { set, ...values } = ledger.values;
    const onPoint = set === 'on-point';
    if (onPoint && values.sashing.gt(0) && !values.cornerstones)
        ledger.refuse('cornerstones', say('needsCornerstones'));
    ledger.given('block', 'across', 'down', 'set', 'sashing', 'cornerstones', 'frame');
    const { across, down } = ledger.inputs;
    const oneLess = (blocks) => blocks.minus(count(1)).asResult();
    const inRows = across.times(down);
    const all = onPoint ? inRows.plus(oneLess(across).times(oneLess(down))) : inRows;
    const { value } = ledger.row('blocks', all, { from: ['set'] });
    return { ...values, onPoint, count: value.valueOf() };
};
/** What the sides of the top are made of. */
const sewnIn = ({ inputs: { block, sashing } }, { onPoint, frame }) => ({
    block,
    sashing,
    onPoint,
    frame,
});
/** The size that the top is wanted in, if somebody says so: for a bed, or as a size. Adds the rows for it. */
const wantedIn = (ledger) => {
    const { bed, target } = ledger.values;
    ledger.given('bed');
    const forBed = bed === 'none' ? undefined : sidesOf(sizeForBed(ledger, bed));
    ledger.given('target');
    if (isCrib(bed))
        ledger.note(sayOfBed('notForCrib'));
    if (forBed && target)
        ledger.note(say('targetNotUsed'));
    const size = forBed ?? (target && { width: target[0], length: target[1] });
    if (!size)
        return undefined;
    ledger.given('border');
    return { ...size, border: ledger.values.border };
};
/** The size of the top, finished and with its seam allowance, with the rows for both. */
const sizesOf = (ledger, layout) => {
    const { across, down, seam } = ledger.inputs;
    const sewn = sewnIn(ledger, layout);
    const from = ['block', 'sashing', 'set', 'frame'];
    const finished = {
        width: ledger.measurable('finishedWidth', sideOf(sewn, across), { from }),
        length: ledger.measurable('finishedLength', sideOf(sewn, down), { from }),
    };
    const allowance = seam.times(2);
    const unfinished = sidesOf({
        width: finished.width.plus(allowance),
        length: finished.length.plus(allowance),
    });
    ledger.row('unfinished', say('unfinishedSize', { size: unfinished }), {
        how: say('moreEachWay', { allowance }),
        from: ['finishedWidth', 'finishedLength'],
    });
    return { finished: sidesOf(finished), unfinished };
};
/** Pieces of one kind from their own cloth. */
const partOf = (plans, { kind, cuts, input }, cloth) => {
    const ways = plans.ways(cuts, input, cloth.width);
    if (kind === 'sashing')
        plans.sayJoins(cuts, ways, cloth.width);
    const best = lessOf(ways.whole, ways.joined);
    const fabric = best.fabric.value;
    return {
        part: say('part', { kind }),
        fabric,
        buy: enoughFor(fabric, plans.ledger.values.increment),
        cloth,
        cuts: best.cuts,
        strips: best.strips,
        used: { kind, pieces: cuts, plan: best.plan },
    };
};
/** All parts together, from one cloth if that is possible. Planned together, they may take less. */
const allOf = (plans, parts, areOne) => {
    const apart = plans.of(parts.flatMap(({ cuts }) => cuts), parts.flatMap(({ strips }) => strips));
    if (!areOne)
        return apart;
    const { whole, joined } = plans.ways(parts.flatMap(({ used }) => used.pieces), 'sashing', plans.cloth.width.value);
    return lessOf(lessOf(whole, joined), apart);
};

export { reckon };
