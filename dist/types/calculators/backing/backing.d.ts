import type { Calculator } from '../calculator.js';
import { type BackingAnswer } from './shape.js';
/** Cloth for a quilt's back. */
export declare const backing: Calculator<BackingAnswer>;
