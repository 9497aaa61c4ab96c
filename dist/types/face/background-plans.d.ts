import type { Planner } from '../ledger/planning.js';
/** Plans long lists in the background, one at a time, and only those that the last answer still asked for. */
export declare class BackgroundPlans {
    #private;
    readonly renew: () => void;
    readonly tell: (ready: boolean) => void;
    /**
     * @param renew is called when a plan is ready, to reckon with it.
     * @param tell is called after that, to show it, and now and then before.
     */
    constructor(renew: () => void, tell: (ready: boolean) => void);
    /**
     * Reckons with the plans that are ready, and goes on with those that are not.
     *
     * @param isEarly no further plan is begun, since what is planned will be different soon.
     */
    reckon<R>(work: (plan: Planner) => R, isEarly?: boolean): R;
    stop(): void;
}
