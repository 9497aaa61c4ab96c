import { least, type Exact } from '../measure/exact.js';
import type { Book } from './book.js';
import { isBlank, readField, type Field, type Fields } from './fields.js';
import { clothFields } from './shared.js';

/** The cloth of one fabric: its usable width, once washed, and the same as sold. */
export interface OwnCloth<Length = string> {
  width: Length;
  sold: Length;
}

/** The cloth of a fabric that says its own width; any other is as wide as the book says. `of` it a wrong width is said. */
export const ownCloth = (
  book: Book<Fields & { fabricWidth: Field<Exact> }>,
  { cloth, kept }: { cloth: Exact; kept: Exact },
  own: unknown,
  of: string,
): OwnCloth<Exact> => {
  if (isBlank(own)) return { width: cloth, sold: book.values.fabricWidth };
  const sold = book.blame('fabricWidth', () => readField(clothFields.fabricWidth, own, book.style), of);
  const width = sold.mul(kept);
  // What was measured may be of this fabric.
  const isMeasured = book.rows.some(({ id, role }) => id === 'washedWidth' && role === 'measured');
  return { width: isMeasured ? least(cloth, width) : width, sold };
};

/** The cloth of each part in turn, as `fabricWidths` has them; the last is that of all further parts. */
export const ownCloths = (
  book: Book<Fields & { fabricWidth: Field<Exact> }>,
  cloth: { cloth: Exact; kept: Exact },
): ((at: number) => OwnCloth<Exact>) => {
  const { fabricWidths } = book.input;
  const widths: unknown[] = Array.isArray(fabricWidths) ? fabricWidths : [];
  return (at) => {
    const place = Math.min(at, widths.length - 1);
    return ownCloth(book, cloth, widths[place], `Cloth ${place + 1}: `);
  };
};
