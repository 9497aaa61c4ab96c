import { exact, type Exact } from '../measure/exact.js';
import { MATTRESSES } from '../trade/beds.js';
import type { battingFields, Size } from './batting.js';
import type { Book } from './book.js';

/** The finished quilt and the ids of its rows: as it was given, or as it hangs over a bed. */
export const quiltOrBed = (book: Book<typeof battingFields>): { quilt: Size<Exact>; ids: Size } => {
  const { bed, width, length, drop, tuck } = book.values;
  const { n, l } = book;
  book.given('bed');
  if (bed === 'none') {
    book.given('width', 'length');
    return { quilt: { width: width!, length: length! }, ids: { width: 'width', length: 'length' } };
  }
  if (width || length)
    book.notes.push('The size is reckoned for the bed; the width and length that were given are not used.');

  const mattress = MATTRESSES[bed]!;
  const [across, along] = [exact(mattress.width), exact(mattress.length)];
  book.row('mattress', 'Mattress', book.size(across, along), 'measure yours', ['bed']);
  book.given('drop', 'tuck');
  const wide = across.add(drop.mul(2));
  const wideHow = `${n(across)} + 2 × ${n(drop)} = ${l(wide)}`;
  const long = along.add(drop).add(tuck);
  const longHow = `${n(along)} + ${n(drop)} + ${n(tuck)} = ${l(long)}`;
  return {
    quilt: {
      width: book.measurable('bedWidth', 'Quilt width', wide, wideHow, ['mattress', 'drop']),
      length: book.measurable('bedLength', 'Quilt length', long, longHow, ['mattress', 'drop', 'tuck']),
    },
    ids: { width: 'bedWidth', length: 'bedLength' },
  };
};
