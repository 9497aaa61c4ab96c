import type { Calculator } from '../calculator.js';
import { draw } from './draw.js';
import { reckon } from './reckon.js';
import { bindingFields, type BindingAnswer } from './shape.js';

/** Strips and cloth for a quilt's binding. */
export const binding: Calculator<BindingAnswer> = { name: 'binding', fields: bindingFields, reckon, draw };
