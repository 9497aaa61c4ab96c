import type { Cloth } from '../../ledger/cloth.js';
import type { Ledger } from '../../ledger/ledger.js';
import { type Quantity } from '../../ledger/quantity.js';
import type { BiasNeed } from '../../planner/bias.js';
import { type bindingFields, type BindingAnswer, type BindingRow } from './shape.js';
export type BindingLedger = Ledger<typeof bindingFields, BindingRow>;
/** What a strip is cut to, and the input to change where it cannot be cut. */
export interface Strip {
    strip: Quantity;
    stripInput: 'stripWidth' | 'finished' | 'fabricWidth';
}
/** A binding whose length and strip are known, and what it is cut from. */
export interface BindingJob extends Strip {
    ledger: BindingLedger;
    need: Quantity;
    cloth: Cloth;
    /** Joined at 45°, as bias always is. */
    isDiagonal: boolean;
    /** What each join uses up. */
    loss: Quantity;
}
/** What a way to cut the binding gives. */
export type Cutting = Omit<BindingAnswer, 'length' | 'stripWidth' | 'fatQuarters' | 'used'>;
/** Adds the row of what a join uses up; gives back the job that reckons with it. */
export declare const withLossRow: (job: BindingJob) => BindingJob;
/** How far so many strips reach. */
export declare const reachBy: (strips: number, each: Quantity, { loss }: BindingJob) => Quantity;
export declare const biasNeed: ({ ledger, need, strip, loss }: BindingJob) => BiasNeed;
/** Refuses a strip that the cloth does not hold. */
export declare const refuseTooWide: ({ ledger, stripInput, strip, cloth: { width } }: BindingJob, code: "stripTooWide" | "noSquare") => never;
