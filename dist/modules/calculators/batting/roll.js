import { Cut, Purchase } from '../../ledger/purchase.js';
import { count, inches } from '../../ledger/quantity.js';
import { facing, MOST_JOINED, sidesOf } from '../../ledger/quilt.js';
import { buyCloth } from '../../ledger/shop.js';
import { say } from './shape.js';

/** The widths of the rolls: the given ones, or the usual ones. */
const rollWidth = (ledger, { roll }) => {
    const at = ledger.values.roll?.indexOf(roll) ?? -1;
    return at < 0 ? inches(roll) : ledger.entry('roll', at, roll);
};
/** Lengths from a roll, joined edge to edge if one is not wide enough. */
const buyFromRoll = (ledger, plan, need) => {
    const { roll, lengths, each, direction } = plan;
    const isCrosswise = direction === 'crosswise';
    const [across, along] = facing(need, isCrosswise);
    if (lengths > MOST_JOINED)
        ledger.refuse('roll', say('tooManyLengths', { roll, lengths }));
    const reach = count(lengths).times(rollWidth(ledger, plan));
    const lengthCount = ledger.row('lengths', count(lengths), {
        label: say('lengthsOfRoll', { roll }),
        how: say('lengthsReach', { reach, need: across, lengths }),
        from: ['roll'],
    });
    const side = isCrosswise ? 'width' : 'length';
    const length = ledger.row('each', along, { how: say('eachLength', { side, from: along }) });
    if (!ledger.values.roll?.length)
        ledger.note(say('noPackage'));
    if (lengths > 2)
        ledger.note(say('moreThanTwo', { lengths }));
    const bought = buyCloth(ledger, lengthCount.times(length));
    const { inches: long, amount, unit } = bought.buy;
    return {
        ...bought,
        // The same amount from a narrower roll would be too little.
        buy: new Purchase(long, amount, unit, say('ofRoll', { bought: bought.buy, roll })),
        summary: say('rollSummary', { lengths, roll, need: sidesOf(need) }),
        cuts: [new Cut(lengths, say('lengthOfBatting'), roll, each)],
    };
};

export { buyFromRoll };
