import type { Calculator } from '../calculator.js';
import { type BindingAnswer } from './shape.js';
/** Strips and cloth for a quilt's binding. */
export declare const binding: Calculator<BindingAnswer>;
