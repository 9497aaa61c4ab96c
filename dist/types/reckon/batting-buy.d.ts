import type { RollPlan } from '../cutting/rolls.js';
import { type Exact } from '../measure/exact.js';
import type { battingFields, BattingResult } from './batting.js';
import type { Own } from './answer.js';
import { type Book } from './book.js';
import type { RankedPackage } from './packages.js';
import { type Size } from './shared.js';
type Bought = Pick<Own<BattingResult>, 'buy' | 'fabric' | 'spare' | 'summary' | 'cuts'>;
/** One package: what it leaves over both ways, and its price where the list gives one. */
export declare const buyPackage: (book: Book<typeof battingFields>, pack: RankedPackage, need: Size<Exact>) => Bought;
/** Lengths from a roll, butted where one is not wide enough. */
export declare const buyFromRoll: (book: Book<typeof battingFields>, plan: RollPlan, need: Size<Exact>) => Bought;
export {};
