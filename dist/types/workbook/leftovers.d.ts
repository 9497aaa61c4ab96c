import type { Planner } from '../ledger/planning.js';
import { type Exact } from '../measure/exact.js';
import type { Style } from '../measure/format.js';
import { type Step } from '../measure/shop.js';
import { type Free, type Rectangle } from '../planner/free.js';
import { type LineCloth, type SheetCloth } from './cloths.js';
import type { Leftover } from './shape.js';
/** A rectangle of cloth that is left, washed. `sheet` is the number of its sheet or of its length, from 0. */
export interface Left extends Free {
    /** It is the end of a bought length, where a shop may have cut crooked. */
    isEnd?: boolean;
}
/** What a line of the list leaves of the cloth that is bought. */
export declare const leftOfLine: (cloth: LineCloth, step: Step, plan: Planner) => Left[];
/** What is left of sheets. Nothing if none is bought. */
export declare const leftOfSheets: (cloth: SheetCloth, plan: Planner) => Left[];
/** Nobody reads a longer list. */
export declare const MOST_NAMED = 5;
/** The shorter side of the smallest piece that is named. */
export declare const leastLeftover: (style: Style) => Exact;
/** A size that a reader can measure in it: rounded down to the marks of her ruler. */
export declare const measurable: ({ width, height }: Rectangle, { units }: Style) => Omit<Leftover, "count">;
/** What a line of the list leaves. It is reckoned once, when somebody first asks for it. */
export declare const leftoversOf: (leftOf: () => Left[], style: Style) => {
    left: () => Left[];
    named: () => Leftover[];
};
