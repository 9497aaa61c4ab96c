import { draw } from './draw.js';
import { reckon } from './reckon.js';
import { bindingFields } from './shape.js';

/** Strips and cloth for a quilt's binding. */
const binding = { name: 'binding', fields: bindingFields, reckon, draw };

export { binding };
