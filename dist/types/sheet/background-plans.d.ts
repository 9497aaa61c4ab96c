import type { Planner } from '../reckon/cutting.js';
/** Plans long lists in the background, one at a time; asking for another list stops the one under way. */
export declare class BackgroundPlans {
    #private;
    readonly tell: (ready: boolean) => void;
    /** @param tell is called when a plan is ready, and now and then before. */
    constructor(tell: (ready: boolean) => void);
    /** The plan where it is ready; else a message that says how far it is. */
    readonly plan: Planner;
    stop(): void;
}
