import { ownLength } from '../../ledger/lengths.js';
import { inches } from '../../ledger/quantity.js';
import { sidesOf } from '../../ledger/quilt.js';
import { BED_SIZES } from '../../trade/beds.js';
import { say } from './shape.js';

/** Whether the bed is one for a baby. */
const isCrib = (bed) => bed !== 'none' && !!BED_SIZES[bed].isCrib;
/** The finished size of the quilt: the given one, or the one for a bed. */
const quiltOrBed = (ledger) => {
    const { bed, width, length } = ledger.values;
    ledger.given('bed');
    if (bed === 'none') {
        ledger.given('width', 'length');
        return { width: ledger.needed('width'), length: ledger.needed('length') };
    }
    if (width || length)
        ledger.note(say('sizeForBed'));
    const size = BED_SIZES[bed];
    const mattress = { width: inches(ownLength(size.width)), length: inches(ownLength(size.length)) };
    ledger.row('mattress', say('size', sidesOf(mattress)), { how: say('measureYours'), from: ['bed'] });
    ledger.given('drop', 'tuck');
    const { drop, tuck } = ledger.inputs;
    const from = ['mattress'];
    return {
        width: ledger.measurable('bedWidth', mattress.width.plus(drop.times(2)), { from }),
        length: ledger.measurable('bedLength', mattress.length.plus(drop).plus(tuck), { from }),
    };
};

export { isCrib, quiltOrBed };
