import { clothOf } from '../../ledger/cloth.js';
import { joined } from '../../ledger/joined.js';
import { Ledger } from '../../ledger/ledger.js';
import { usualLength } from '../../ledger/lengths.js';
import { Cut, enoughFor } from '../../ledger/purchase.js';
import { count } from '../../ledger/quantity.js';
import { withOverage, sidesOf, facing, MOST_JOINED } from '../../ledger/quilt.js';
import { buyCloth } from '../../ledger/shop.js';
import { upTo } from '../../measure/exact.js';
import { fewest, reachOf } from '../../planner/joins.js';
import { BACKING_SEAM } from '../../trade/conventions.js';
import { backingFields, say } from './shape.js';

/**
 * Cloth for a quilt's back: every layout of panels, with its seams and cloth. The one with the least cloth comes first, then the one
 * with the fewest seams. Layouts with a pieced strip come last, unless `piecedStrip` is set.
 */
const reckon = (input = {}) => {
    const ledger = new Ledger(backingFields, input);
    return ledger.finish(() => {
        const { width, length } = ledger.inputs;
        ledger.given('width', 'length');
        const need = withOverage(ledger, { width, length });
        const cloth = clothOf(ledger);
        const layouts = layoutsOf(ledger, sidesOf(need), cloth);
        const best = bestOf(ledger, layouts, cloth);
        ledger.given();
        const rows = rowsOf(ledger, best, need, cloth);
        const { oneWay } = ledger.values;
        return {
            ...buyCloth(ledger, rows.fabric),
            need: sidesOf(need),
            summary: say('summary', { ...best, strip: !!best.strip, oneWay, need: sidesOf(need) }),
            layouts,
            leftover: leftoverOf(best, sidesOf(need), rows.reach.value, cloth),
            cuts: rows.cuts,
            used: { cloth, seam: ledger.values.seam, quilt: sidesOf({ width, length }) },
        };
    });
};
/** Every layout that is possible, in both directions. */
const layoutsOf = (ledger, need, cloth) => [
    ...layoutsIn(ledger, 'lengthwise', facing(need, false), cloth),
    ...(ledger.values.oneWay ? [] : layoutsIn(ledger, 'crosswise', facing(need, true), cloth)),
];
/** The layouts of one direction: whole panels, and one panel fewer with a pieced strip. */
const layoutsIn = ({ values: { seam, repeat, oneWay, increment } }, direction, [across, along], { width: { value: width }, kept }) => {
    const loss = seam.mul(2);
    const panels = fewest(across, width, loss);
    if (!panels)
        return [];
    const uncut = along.div(kept);
    // Panels match if each starts at the same place of the print.
    const panelLength = panels > 1 && repeat.gt(0) ? upTo(uncut, repeat) : uncut;
    const layout = (panels, strip) => {
        const fabric = panelLength.mul(panels).add(strip ? strip.height.mul(strip.count) : 0);
        const seams = panels - 1 + (strip ? strip.count : 0);
        const cover = strip ? across : reachOf(panels, width, loss);
        return { panels, direction, seams, panelLength, strip, cover, fabric, buy: enoughFor(fabric, increment) };
    };
    const whole = layout(panels);
    const pieces = fewest(along, width, loss);
    if (panels === 1 || oneWay || !pieces)
        return [whole];
    const missing = across.sub(reachOf(panels - 1, width, loss)).add(loss);
    return [whole, layout(panels - 1, { count: pieces, height: missing.div(kept) })];
};
/** Puts the layouts in order and gives the one to use. Refuses if the cloth allows none. */
const bestOf = (ledger, layouts, { width: { value: cloth } }) => {
    const { piecedStrip, seam } = ledger.values;
    const isLast = ({ strip }) => (strip && !piecedStrip ? 1 : 0);
    const [best] = layouts.sort((a, b) => isLast(a) - isLast(b) || a.fabric.compare(b.fabric) || a.seams - b.seams);
    if (!best) {
        const isSeam = cloth.gt(usualLength(BACKING_SEAM, ledger.style).mul(2));
        return ledger.refuse(isSeam ? 'seam' : 'fabricWidth', say('seamsLeaveNothing', { seam, cloth, isSeam }));
    }
    const { panels } = best;
    if (panels > MOST_JOINED)
        return ledger.refuse('fabricWidth', say('tooManyPanels', { cloth, panels }));
    return best;
};
/** The rows of a layout: its panels, its strip, and the cloth for them. */
const rowsOf = (ledger, { panels, panelLength, strip, direction }, need, cloth) => {
    const { seam, repeat } = ledger.inputs;
    const isCrosswise = direction === 'crosswise';
    const [across, along] = facing(need, isCrosswise);
    const reachBy = (panels) => joined(panels, cloth.width, count(2 * panels - 2).times(seam));
    const reach = reachBy(panels);
    const panelCount = ledger.row('panels', count(panels), {
        how: say('panelsReach', { reach, need: across, isShort: !!strip }),
    });
    const uncut = cloth.toBuy(along);
    const isRepeated = !panelLength.equals(uncut.value);
    const panel = isRepeated ? uncut.upTo(repeat) : uncut;
    const side = isCrosswise ? 'width' : 'length';
    // The length that is needed, if neither the wash nor the repeat makes it longer.
    const how = panel === along ? say('panelLength', { side, from: along }) : panel;
    const each = ledger.row('panel', panel, { how });
    const cuts = [new Cut(panels, say('backingPanel'), cloth.width.value, panelLength.mul(cloth.kept))];
    const all = panelCount.times(each);
    if (!strip)
        return { fabric: all, reach, cuts };
    const missing = across.minus(reach.asResult()).plus(count(2).times(seam));
    const height = ledger.row('strip', cloth.toBuy(missing), { from: ['panels'] });
    const pieces = ledger.row('stripCount', count(strip.count), {
        how: say('panelsReach', { reach: reachBy(strip.count), need: along, isShort: false }),
    });
    cuts.push(new Cut(strip.count, say('stripToJoin'), strip.height.mul(cloth.kept), cloth.width.value));
    return { fabric: all.plus(pieces.times(height)), reach, cuts };
};
/** What is left over beside the last panel. */
const leftoverOf = ({ panelLength, direction }, need, reach, { kept }) => {
    const [across] = facing(need, direction === 'crosswise');
    return reach.gt(across) ? { width: reach.sub(across), length: panelLength.mul(kept) } : undefined;
};

export { reckon };
