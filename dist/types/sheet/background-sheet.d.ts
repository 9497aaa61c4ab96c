import type { Answer } from '../reckon/answer.js';
import { BackgroundPlans } from './background-plans.js';
import { QuiltSheet } from './sheet.js';
/** A sheet that also reads what stands inside its element, and plans how to cut it in the background. */
export declare abstract class BackgroundSheet<R extends Answer = Answer> extends QuiltSheet<R> {
    #private;
    protected readonly plans: BackgroundPlans;
    /** What to read again for. */
    protected readonly watched: MutationObserverInit;
    /** Reads what stands inside the element. */
    protected abstract readInside(): void;
    connectedCallback(): void;
    /** Reads again when something changes in there; that goes on outside the page, where something may be taken out too. */
    protected watch(around: Node): void;
    disconnectedCallback(): void;
}
