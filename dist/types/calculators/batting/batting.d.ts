import type { Calculator } from '../calculator.js';
import { type BattingAnswer } from './shape.js';
/** Batting for a quilt: the package that is large enough, or the length to buy from a roll. Also the size of a quilt for a bed. */
export declare const batting: Calculator<BattingAnswer>;
