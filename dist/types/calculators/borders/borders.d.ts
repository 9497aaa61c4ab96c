import type { Calculator } from '../calculator.js';
import { type BordersAnswer } from './shape.js';
/** Borders round a quilt top: cut lengths, strips, cloth, and the finished size. */
export declare const borders: Calculator<BordersAnswer>;
