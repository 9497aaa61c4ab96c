import { draw } from './draw.js';
import { reckon } from './reckon.js';
import { sleeveFields } from './shape.js';

/** A hanging sleeve. */
const sleeve = {
    name: 'sleeve',
    fields: sleeveFields,
    reckon,
    draw,
    // The seam of the worksheet is that of the blocks, not of a sleeve.
    own: ['seam'],
};

export { sleeve };
