import { lengthOf } from '../../drawing/picture.js';
import type { Style } from '../../measure/format.js';
import type { CutStrip } from '../../reckon/strips.js';
import type { Listing } from '../../face/calculator.js';

/** The strips to cut of each fabric or for each part, those cut alike in one row, and what comes from each. */
export const stripList = (
  plans: { fabric: string; strips: CutStrip[] }[],
  style: Style,
  of = 'Fabric',
): Listing => ({
  caption: 'Strips, from the top of the cloth',
  toCut: true,
  head: [of, 'Strips', 'Width', 'What each gives'],
  rows: plans.flatMap(({ fabric, strips }) => {
    const rows = new Map<string, [height: string, gives: string, count: number]>();
    for (const { count, height, gives } of strips) {
      const given = gives.map(({ piece, count }) => `${count} × ${piece}`).join(', ');
      const [, , before] = rows.get(height + given) ?? [0, 0, 0];
      rows.set(height + given, [lengthOf(height, style), given, before + count]);
    }
    return [...rows.values()].map(([height, given, count]) => [fabric || '–', `${count}`, height, given]);
  }),
});
