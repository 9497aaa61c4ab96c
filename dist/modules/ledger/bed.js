import { sayings } from '../measure/message.js';
import { BED_SIZES, BEDS, BED_CHOICES } from '../trade/beds.js';
import { BED_DROP } from '../trade/conventions.js';
import { choiceField } from './kinds.js';
import { lengthField, ownLength } from './lengths.js';
import { inches } from './quantity.js';
import { sidesOf } from './quilt.js';

/** The bed that a quilt is for, and how far it hangs over it. */
const bedFields = {
    bed: choiceField(BED_CHOICES, { offered: BEDS }),
    drop: lengthField({ initial: BED_DROP, zero: true, most: '60 in' }),
    tuck: lengthField({ initial: '0', zero: true, most: '60 in' }),
};
const sayOfBed = sayings();
/** Whether the bed is one for a baby. */
const isCrib = (bed) => bed !== 'none' && !!BED_SIZES[bed].isCrib;
/** The size of a quilt for a bed, with the rows for it. */
const sizeForBed = (ledger, bed) => {
    const size = BED_SIZES[bed];
    const mattress = { width: inches(ownLength(size.width)), length: inches(ownLength(size.length)) };
    ledger.row('mattress', sayOfBed('size', sidesOf(mattress)), {
        how: sayOfBed('measureYours'),
        from: ['bed'],
    });
    ledger.given('drop', 'tuck');
    const { drop, tuck } = ledger.inputs;
    const from = ['mattress'];
    return {
        width: ledger.measurable('bedWidth', mattress.width.plus(drop.times(2)), { from }),
        length: ledger.measurable('bedLength', mattress.length.plus(drop).plus(tuck), { from }),
    };
};

export { bedFields, isCrib, sayOfBed, sizeForBed };
