import type { Calculator } from '../calculator.js';
import { type SleeveAnswer } from './shape.js';
/** A hanging sleeve. */
export declare const sleeve: Calculator<SleeveAnswer>;
