import { least } from '../measure/exact.js';
import { isBlank, readField } from './fields.js';
import { clothFields } from './shared.js';

/** The cloth of a fabric that says its own width; any other is as wide as the book says. `of` it a wrong width is said. */
const ownCloth = (book, { cloth, kept }, own, of) => {
    if (isBlank(own))
        return { width: cloth, sold: book.values.fabricWidth };
    const sold = book.blame('fabricWidth', () => readField(clothFields.fabricWidth, own, book.style), of);
    const width = sold.mul(kept);
    // What was measured may be of this fabric.
    const isMeasured = book.rows.some(({ id, role }) => id === 'washedWidth' && role === 'measured');
    return { width: isMeasured ? least(cloth, width) : width, sold };
};
/** The cloth of each part in turn, as `fabricWidths` has them; the last is that of all further parts. */
const ownCloths = (book, cloth) => {
    const { fabricWidths } = book.input;
    const widths = Array.isArray(fabricWidths) ? fabricWidths : [];
    return (at) => {
        const place = Math.min(at, widths.length - 1);
        return ownCloth(book, cloth, widths[place], `Cloth ${place + 1}: `);
    };
};

export { ownCloth, ownCloths };
