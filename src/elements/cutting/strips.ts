import { lengthOf } from '../../drawing/picture.js';
import type { Style } from '../../measure/format.js';
import type { FabricPlan } from '../../reckon/cutting.js';
import type { Listing } from '../../sheet/calculator.js';

/** The strips to cut, and what comes from each. */
export const stripList = (fabrics: FabricPlan[], style: Style): Listing => ({
  caption: 'Strips, from the top of the cloth',
  head: ['Fabric', 'Strips', 'Height', 'What each gives'],
  rows: fabrics.flatMap(({ fabric, strips }) =>
    strips.map(({ count, height, gives }) => [
      fabric || '–',
      `${count}`,
      lengthOf(height, style),
      gives.map(({ piece, count }) => `${count} × ${piece}`).join(', '),
    ]),
  ),
});
