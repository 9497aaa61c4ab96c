import { exact } from '../measure/exact.js';
import { MATTRESSES } from '../trade/beds.js';

/** The finished quilt and the ids of its rows: as it was given, or as it hangs over a bed. */
const quiltOrBed = (book) => {
    const { bed, width, length, drop, tuck } = book.values;
    book.given('bed');
    if (bed === 'none') {
        book.given('width', 'length');
        return { quilt: { width: width, length: length }, rows: { width: 'width', length: 'length' } };
    }
    if (width || length)
        book.notes.push('The size is reckoned for the bed; the width and length that were given are not used.');
    const mattress = MATTRESSES[bed];
    const [across, along] = [exact(mattress.width), exact(mattress.length)];
    book.row('mattress', 'Mattress', book.size(across, along), 'measure yours', ['bed']);
    book.given('drop', 'tuck');
    const measurable = (id, label, reckoned, how) => book.measurable(id, label, reckoned, `${how} =`, ['mattress']);
    return {
        quilt: {
            width: measurable('bedWidth', 'Quilt width', across.add(drop.mul(2)), `${book.n(across)} + 2 × {drop}`),
            length: measurable('bedLength', 'Quilt length', along.add(drop).add(tuck), `${book.n(along)} + {drop} + {tuck}`),
        },
        rows: { width: 'bedWidth', length: 'bedLength' },
    };
};

export { quiltOrBed };
