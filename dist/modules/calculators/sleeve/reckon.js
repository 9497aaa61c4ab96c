import { clothOf } from '../../ledger/cloth.js';
import { joined } from '../../ledger/joined.js';
import { Ledger } from '../../ledger/ledger.js';
import { Cut } from '../../ledger/purchase.js';
import { count } from '../../ledger/quantity.js';
import { buyCloth } from '../../ledger/shop.js';
import { fewest } from '../../planner/joins.js';
import { sleeveFields, say } from './shape.js';

/** Cloth for the sleeve that a quilt hangs by: a strip across its top edge, hemmed at both ends and sewn to a tube. */
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
        ledger.note(say('seeLeftover'));
        const size = { width: finished.value, length: depth.value };
        const piece = say(strips.value.gt(1) ? 'stripToJoin' : 'sleeveStrip');
        const long = strips.value.gt(1) ? cloth.width : cutLength;
        return {
            ...buyCloth(ledger, cloth.toBuy(strips.times(stripWidth))),
            finished: size,
            strips: strips.value.valueOf(),
            summary: say('summary', { strips: strips.value.valueOf(), finished: size.width, depth: size.length }),
            cuts: [new Cut(strips.value.valueOf(), piece, stripWidth.value, long.value)],
            used: { cloth, quilt: width.value, short: short.value },
        };
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
