import { draw } from './draw.js';
import { reckon } from './reckon.js';
import { sleeveFields } from './shape.js';

/** A hanging sleeve. */
const sleeve = {
    name: 'sleeve',
    fields: sleeveFields,
    reckon,
    draw,
    // What lies along the cloth of a backing is no seam of a sleeve.
    own: ['seam'],
};

export { sleeve };
