import type { Answer } from '../ledger/answer.js';
import { BackgroundPlans } from './background-plans.js';
import { Face } from './face.js';
/** A face that plans how to cut its cloth in the background. */
export declare abstract class PlanningFace<A extends Answer = Answer> extends Face<A> {
    protected readonly plans: BackgroundPlans;
    connectedCallback(): void;
    disconnectedCallback(): void;
}
/** The same, for one that also reads what stands inside its element. */
export declare abstract class ReadingFace<A extends Answer = Answer> extends PlanningFace<A> {
    #private;
    /** What to read again for. */
    protected readonly watched: MutationObserverInit;
    /** Whether reading is put off until it is drawn. */
    protected putsOff(): boolean;
    /** Reads what stands inside the element. */
    protected abstract readInside(): void;
    connectedCallback(): void;
    /** Reads again when something changes in there; that goes on outside the page, where something may be taken out too. */
    protected watch(around: Node): void;
}
