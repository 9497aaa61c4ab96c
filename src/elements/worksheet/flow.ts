import type { Flow } from '../../face/calculator.js';
import type { QuiltSheet } from '../../face/sheet.js';
import { COTTON_WIDTH } from '../../trade/conventions.js';
import type { QuiltCutting } from '../cutting/cutting.js';
import type { QuiltTop } from '../top/top.js';
import { flowing, type Fabrics } from './fabrics.js';

/** A quilt's size as it flows from one part to the next. */
interface QuiltSize {
  width?: unknown;
  length?: unknown;
}

/** A part that makes the quilt from blocks comes first, then what makes it larger; the others take what comes of it. */
const place = ({ calculator: { finishes, fields } }: QuiltSheet): number =>
  finishes ? Number('width' in fields) : 2;

/** That the list lacks cloth for the blocks: there is none, or it was written for other blocks. */
const cautionOf = ({ blocks: { written, now } }: QuiltTop, lists: QuiltCutting[]): string =>
  !lists[0]
    ? now &&
      'Cloth for the blocks is not in this list. Add a <quilt-cutting> with what to cut for them, like A | square | 3 1/2 | 12.'
    : written && now && written !== now
      ? `Cloth for ${now} is not in this list: the cut list was written for ${written}. Write in it how many pieces those take, and of what size.`
      : '';

/** Lets sizes and settings flow once through the parts. One pass: nothing flows back. */
export const flow = (
  worksheet: QuiltSheet,
  parts: QuiltSheet[],
  fabrics: Fabrics,
): { size: QuiltSize; caution: string; lists: QuiltCutting[] } => {
  const { units, shown, shrinkage, increment, currency, lengthStyle } = worksheet;
  const [width, length, seam] = [worksheet.width, worksheet.length, worksheet.seam].map(
    (raw) => flowing(raw, lengthStyle).text,
  );
  const lists = parts.filter((part): part is QuiltCutting => 'isAsWritten' in part);
  const forAll = { units, shown, shrinkage, increment, currency, seam };
  const forLists = { widths: fabrics.widths, usualWidth: fabrics.widthOf('').width ?? COTTON_WIDTH };
  let size: QuiltSize = { width, length };
  let source = 'from the worksheet';
  let caution = '';
  for (const part of [...parts].sort((a, b) => place(a) - place(b))) {
    const { own = [], finishes, byPiece } = part.calculator;
    const letters = fabrics.lettersOf(part);
    const { fabricWidth, fabricWidths, from } = fabrics.widthsOf(letters);
    const values: Flow['values'] = {
      ...forAll,
      ...size,
      ...forLists,
      caution,
      letters,
      fabricWidth,
      fabricWidths,
      // What is bought by the piece is bought by itself.
      shared: !byPiece?.(),
    };
    for (const key of own) delete values[key];
    const given: Flow = { values, from: { width: source, length: source, fabricWidth: from } };
    if (JSON.stringify(given) !== JSON.stringify(part.flow)) part.flow = given;
    if ('blocks' in part) caution ||= cautionOf(part as QuiltTop, lists);
    if (!finishes) continue;
    const { finished } = part.result as { finished?: { width: string; length: string } };
    size = finished ? { width: `${finished.width} in`, length: `${finished.length} in` } : {};
    source = `from the ${finishes}`;
  }
  return { size, caution, lists };
};
