import { type Exact } from '../measure/exact.js';
import type { BindingResult, bindingFields } from './binding.js';
import type { Own } from './answer.js';
import type { Book } from './book.js';
/** A binding whose length and strip are known, and what it is cut from. */
export interface BindingJob extends ReturnType<Book<typeof bindingFields>['cloth']> {
    book: Book<typeof bindingFields>;
    need: Exact;
    strip: Exact;
    /** The id of the row that holds the strip's width, and the input to change where it cannot be cut. */
    stripRow: 'stripWidth' | 'strip';
    stripInput: 'stripWidth' | 'finished' | 'fabricWidth';
    /** Joined at 45°, as bias always is. */
    diagonal: boolean;
    /** What each join uses up. */
    loss: Exact;
}
type Cutting = Omit<Own<BindingResult>, 'length' | 'stripWidth' | 'fatQuarters'>;
/** Strips across the cloth, joined end to end. */
export declare const straightCut: (job: BindingJob) => Cutting;
/** Squares for continuous bias: one, or the fewest equal ones that fit across the cloth. */
export declare const biasCut: (job: BindingJob) => Cutting;
/** The same binding from fat quarters: strips along the longer side, or for bias a square of each. */
export declare const fatQuarters: (job: BindingJob) => BindingResult["fatQuarters"];
export {};
