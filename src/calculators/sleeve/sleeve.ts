import type { Calculator } from '../calculator.js';
import { draw } from './draw.js';
import { reckon } from './reckon.js';
import { sleeveFields, type SleeveAnswer } from './shape.js';

/** A hanging sleeve. */
export const sleeve: Calculator<SleeveAnswer> = {
  name: 'sleeve',
  fields: sleeveFields,
  reckon,
  draw,
  // The seam of the worksheet is that of the blocks, not of a sleeve.
  own: ['seam'],
};
