import { most } from '../measure/exact.js';
import { STEP, COTTON_WIDTH, OVERAGE, RULER_MARK } from '../trade/conventions.js';
import { sideField, lengthField, choiceField, currencyField, moneyField, stepField, percentField, readLength } from './fields.js';

/** The finished quilt's two sides. */
const quiltFields = {
    width: sideField('Quilt width'),
    length: sideField('Quilt length'),
};
/** What is added round the quilt for its back and its batting. */
const overageField = lengthField('Overage, each side', {
    initial: OVERAGE,
    zero: true,
    most: '36 in',
    hint: 'what longarm quilters ask for',
});
/** Lengths sewn or butted side by side; nobody joins more, and a page could not draw them. */
const MOST_JOINED = 100;
/** `1 join`, `2 joins`. */
const plural = (count, word) => `${count} ${word}${count === 1 ? '' : 's'}`;
/** A size's sides across the cloth and along it, where its length lies along the cloth, or is turned. */
const facing = ({ width, length }, turned) => (turned ? [length, width] : [width, length]);
/** The ids of the rows that {@link withOverage} adds. */
const NEED_ROWS = { width: 'needWidth', length: 'needLength' };
/** The rows that add the overage to a quilt, for its `Backing` or its `Batting`; gives back the size needed. */
const withOverage = (book, name, quilt, rows = { width: 'width', length: 'length' }) => {
    book.given('overage');
    const { overage } = book.values;
    if (overage.gt(most(quilt.width, quilt.length, readLength(OVERAGE, book.style))))
        book.refuse('overage', 'The overage is larger than the quilt itself. Write it like 4 in.');
    const side = (of) => {
        const need = quilt[of].add(overage.mul(2));
        book.row(NEED_ROWS[of], `${name} ${of}`, need, `{${rows[of]}} + 2 × {overage} =`);
        return need;
    };
    return { width: side('width'), length: side('length') };
};
/** The cloth as it lies in the shop. */
const clothFields = {
    fabricWidth: lengthField('Usable width of the cloth', {
        initial: COTTON_WIDTH,
        hint: 'selvages off; measure yours',
    }),
};
/** How strips are sewn end to end. */
const joinField = choiceField('Strips joined', { diagonal: 'at 45°', straight: 'straight' });
/** How the cloth is washed, sold and priced. */
const shopFields = {
    shrinkage: percentField('Shrinkage', { initial: '0', hint: 'cotton about 3 % when prewashed', more: true }),
    increment: stepField('The shop cuts by', { initial: STEP, more: true }),
    price: moneyField('Price of a yard or metre'),
    currency: currencyField('Currency'),
};
/** What the reader's ruler marks; cut sizes fall on it. */
const markField = {
    mark: lengthField('Ruler’s marks', {
        initial: RULER_MARK,
        most: '1 in',
        more: true,
        hint: 'cut sizes fall on them',
    }),
};

export { MOST_JOINED, NEED_ROWS, clothFields, facing, joinField, markField, overageField, plural, quiltFields, shopFields, withOverage };
