import type { Calculator } from '../calculator.js';
import { type CuttingAnswer } from './shape.js';
/** A cut list, cut from cloth or from sheets. */
export declare const cutting: Calculator<CuttingAnswer>;
