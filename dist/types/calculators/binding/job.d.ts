import type { Cloth } from '../../ledger/cloth.js';
import type { Ledger } from '../../ledger/ledger.js';
import { type Quantity } from '../../ledger/quantity.js';
import type { BiasNeed } from '../../planner/bias.js';
import { type bindingFields, type BindingAnswer, type BindingRow } from './shape.js';
export type BindingLedger = Ledger<typeof bindingFields, BindingRow>;
/** How wide a strip is cut, and the input to change if that is not possible. */
export interface Strip {
    strip: Quantity;
    stripInput: 'stripWidth' | 'finished' | 'fabricWidth';
}
/** A binding: its length, its strip, and the cloth that it is cut from. */
export interface BindingJob extends Strip {
    ledger: BindingLedger;
    need: Quantity;
    cloth: Cloth;
    /** Joined at 45°, as bias always is. */
    isDiagonal: boolean;
    /** What each join uses up. */
    loss: Quantity;
}
/** What one way to cut the binding gives. */
export type Cutting = Omit<BindingAnswer, 'length' | 'stripWidth' | 'fatQuarters' | 'used'>;
/** Adds the row of what a join uses up, and gives back the job with that row. */
export declare const withLossRow: (job: BindingJob) => BindingJob;
/** How far this many strips reach. */
export declare const reachBy: (strips: number, each: Quantity, { loss }: BindingJob) => Quantity;
export declare const biasNeed: ({ ledger, need, strip, loss }: BindingJob) => BiasNeed;
/** Refuses a strip that is too wide for the cloth. */
export declare const refuseTooWide: ({ ledger, stripInput, strip, cloth: { width } }: BindingJob, code: "stripTooWide" | "noSquare") => never;
