import { lengthOf } from '../../drawing/picture.js';
import type { Style } from '../../measure/format.js';
import type { CutStrip } from '../../reckon/strips.js';
import type { Listing } from '../../sheet/calculator.js';

/** The strips to cut of each fabric or for each part, and what comes from each. */
export const stripList = (
  plans: { fabric: string; strips: CutStrip[] }[],
  style: Style,
  of = 'Fabric',
): Listing => ({
  caption: 'Strips, from the top of the cloth',
  toCut: true,
  head: [of, 'Strips', 'Height', 'What each gives'],
  rows: plans.flatMap(({ fabric, strips }) =>
    strips.map(({ count, height, gives }) => [
      fabric || '–',
      `${count}`,
      lengthOf(height, style),
      gives.map(({ piece, count }) => `${count} × ${piece}`).join(', '),
    ]),
  ),
});
