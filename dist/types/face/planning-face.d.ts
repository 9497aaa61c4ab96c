import type { Answer } from '../ledger/answer.js';
import { BackgroundPlans } from './background-plans.js';
import { Face } from './face.js';
/** A face that plans how to cut its cloth in the background. */
export declare abstract class PlanningFace<A extends Answer = Answer> extends Face<A> {
    protected readonly plans: BackgroundPlans;
    connectedCallback(): void;
    disconnectedCallback(): void;
}
/** The same for an element that also reads its content. */
export declare abstract class ReadingFace<A extends Answer = Answer> extends PlanningFace<A> {
    #private;
    /** The changes after which it reads again. */
    protected readonly watched: MutationObserverInit;
    /** Whether reading waits until it is drawn. */
    protected putsOff(): boolean;
    /** Reads the content of the element. */
    protected abstract readInside(): void;
    connectedCallback(): void;
    /** Reads again when the content changes, also while the element is outside the page. */
    protected watch(around: Node): void;
}
