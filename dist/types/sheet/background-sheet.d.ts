import type { Answer } from '../reckon/answer.js';
import { BackgroundPlans } from './background-plans.js';
import { QuiltSheet } from './sheet.js';
/** A sheet that plans how to cut its cloth in the background. */
export declare abstract class PlanningSheet<R extends Answer = Answer> extends QuiltSheet<R> {
    protected readonly plans: BackgroundPlans;
    connectedCallback(): void;
    disconnectedCallback(): void;
}
/** The same, for one that also reads what stands inside its element. */
export declare abstract class BackgroundSheet<R extends Answer = Answer> extends PlanningSheet<R> {
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
