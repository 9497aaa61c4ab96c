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
  // What lies along the cloth of a backing is no seam of a sleeve.
  own: ['seam'],
};
