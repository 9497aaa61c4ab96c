import { type Purchase } from '../../ledger/purchase.js';
import { type Bought } from '../../ledger/shop.js';
import { type OwnCloth } from '../../ledger/widths.js';
import { type Exact } from '../../measure/exact.js';
import { type Message } from '../../measure/message.js';
import type { ListedPiece } from './cut-list.js';
import { type FabricPlan, type Job, type PlanLedger } from './plan-shape.js';
/** The letters of a list's fabrics, in its order. */
export declare const lettersOf: (listed: ListedPiece[]) => string[];
/** The job of a list of these fabrics. */
export declare const jobFor: (about: Omit<Job, "isOne" | "hasCloth">, letters: string[]) => Job;
/** Plans the pieces of each fabric. */
export declare const planFabrics: (job: Job, listed: ListedPiece[]) => FabricPlan[];
/** The width of a fabric after the wash, and as sold. */
export declare const widthOf: ({ ledger, input, sheets, cloth }: Job, fabric: string) => OwnCloth;
/**
 * How much cloth, or how many sheets, these pieces of a fabric would take. Undefined if they cannot be cut from it, or if it is not
 * known yet.
 */
export declare const needOf: (job: Job, fabric: string, listed: ListedPiece[]) => Exact | Purchase | undefined;
/** What all fabrics take together. If there is only one fabric, its cloth has all rows already. */
export declare const boughtFor: (job: Job, fabrics: FabricPlan[]) => Bought & {
    sheets?: number | undefined;
};
export declare const summaryOf: ({ isOne, hasCloth }: Job, fabrics: FabricPlan[]) => Message;
/** Says which sizes are between two marks of the ruler, and how they are cut. */
export declare const noteMarks: (ledger: PlanLedger, listed: ListedPiece[], mark: Exact) => void;
/** What the page has to say about this list. */
export declare const cautionsOf: (caution: unknown) => Message[];
