import { sizeForBed } from '../../ledger/bed.js';
import { say } from './shape.js';

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
    return sizeForBed(ledger, bed);
};

export { quiltOrBed };
