import { least } from '../measure/exact.js';
import { clothFields, sayOfCloth } from './cloth.js';
import { isBlank } from './field.js';

/** The cloth of a fabric with a width of its own, or else of the width in the ledger. `of` is what an error is about. */
const ownCloth = (ledger, { width, kept }, own, of) => {
    if (isBlank(own))
        return { width, sold: ledger.values.fabricWidth };
    const sold = ledger.blame('fabricWidth', () => clothFields.fabricWidth.read(own, ledger.style, 'fabricWidth'), of);
    const washed = sold.mul(kept);
    // The measured width may belong to this fabric.
    const isMeasured = ledger.rows.some(({ id, role }) => id === 'washedWidth' && role === 'measured');
    return { width: isMeasured ? least(width, washed) : washed, sold };
};
/** The cloth of each part in order, from `fabricWidths`. The last one counts for all further parts. */
const ownCloths = (ledger, { width, kept }) => {
    const { fabricWidths } = ledger.input;
    const widths = Array.isArray(fabricWidths) ? fabricWidths : [];
    return (at) => {
        const place = Math.min(at, widths.length - 1);
        return ownCloth(ledger, { width: width.value, kept }, widths[place], (says) => sayOfCloth('ofCloth', { number: place + 1, says }));
    };
};

export { ownCloth, ownCloths };
