import type { Calculator } from '../calculator.js';
import { type BattingAnswer } from './shape.js';
/** Batting for a quilt: the package that does, or the length to buy from a roll; and the quilt's size for a bed. */
export declare const batting: Calculator<BattingAnswer>;
