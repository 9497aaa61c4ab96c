import { canBeCut } from '../planner/check.js';
import { planCloth, lotsIn, planClothAsync } from '../planner/plan.js';
import { afterFrame } from './after-frame.js';
import { isCrowd } from './turns.js';

/** So many pieces are planned at once in a turn of the page, by all its elements together. The page does not notice. */
const PLANNED_AT_ONCE = 30;
/** How many of them are left in this turn. */
let left = PLANNED_AT_ONCE;
/** At first, lists of so many lots in all are planned at once. Otherwise a page that is just appearing would jump when the plan comes. */
const PLANNED_AT_FIRST = 100;
/** Plans that are kept after use, so that going back to an earlier list takes no time. */
const MOST_KEPT = 20;
const countOf = ([pieces]) => pieces.reduce((all, { count }) => all + count, 0);
/** Lets the page draw and answer. */
const pause = () => new Promise((done) => setTimeout(done));
/** Whether a list of so many pieces is short enough for what is left of this turn. If it is, it takes its share. */
const fits = (count) => {
    if (count > left)
        return false;
    if (left === PLANNED_AT_ONCE)
        void pause().then(() => (left = PLANNED_AT_ONCE));
    left -= count;
    return true;
};
/** Plans long lists in the background, one at a time, and only those that the last answer still asked for. */
class BackgroundPlans {
    #plans = new Map();
    /** The plans that the last answer asked for. Lists without a plan yet are in `#wanted` too. */
    #used = new Set();
    #wanted = new Map();
    /** Plans that somebody asked for after the reckoning, who looked at what is not always looked at. */
    #later = new Set();
    #isReckoning = false;
    #isEarly = false;
    #atFirst = PLANNED_AT_FIRST;
    #job;
    /**
     * @param renew is called when a plan is ready, to reckon with it.
     * @param tell is called after that, to show it, and now and then before.
     */
    constructor(renew, tell) {
        this.renew = renew;
        this.tell = tell;
    }
    /**
     * Reckons with the plans that are ready, and goes on with those that are not.
     *
     * @param isEarly no further plan is begun, since what is planned will be different soon.
     */
    reckon(work, isEarly = false) {
        this.#used.clear();
        this.#wanted.clear();
        this.#later.clear();
        this.#isEarly = isEarly;
        this.#isReckoning = true;
        const result = work(this.#plan);
        this.#isReckoning = false;
        if (this.#job && !this.#wanted.has(this.#job.key))
            this.stop();
        const [next] = isEarly ? [] : this.#wanted;
        if (next && !this.#job)
            void this.#start(...next);
        return result;
    }
    stop() {
        this.#job?.stop.abort();
        this.#job = undefined;
    }
    #plan = (...asked) => {
        const key = JSON.stringify(asked, (_, value) => typeof value === 'bigint' ? `${value}` : value);
        this.#used.add(key);
        const ready = this.#plans.get(key);
        if (ready)
            return ready;
        void pause().then(() => (this.#atFirst = 0));
        if (!this.#isEarly && this.#isShort(asked))
            return this.#keep(key, planCloth(...asked));
        this.#wanted.set(key, asked);
        if (!this.#isReckoning && !this.#isEarly) {
            this.#later.add(key);
            if (!this.#job)
                void this.#start(key, asked);
        }
        return this.#job?.key === key ? this.#job.done : 0;
    };
    /** If elements take turns, the page is not complete at first anyway. */
    #isShort(asked) {
        const lots = lotsIn(asked[0]);
        if (isCrowd() || lots > this.#atFirst)
            return fits(countOf(asked));
        this.#atFirst -= lots;
        return true;
    }
    #keep(key, plan) {
        for (const old of this.#plans.keys())
            if (this.#plans.size >= MOST_KEPT && !this.#used.has(old))
                this.#plans.delete(old);
        this.#plans.set(key, plan);
        return plan;
    }
    async #start(key, asked) {
        const job = (this.#job = { key, stop: new AbortController(), done: 0 });
        const { signal } = job.stop;
        await afterFrame();
        if (signal.aborted)
            return;
        const onProgress = (done) => {
            // Reckoning again would forget what was asked for after it.
            if (done - job.done < 0.1 || this.#later.has(key))
                return;
            job.done = done;
            this.tell(false);
        };
        const plan = await planClothAsync(...asked, { signal, onProgress }).catch((reason) => {
            if (!signal.aborted)
                throw reason;
        });
        // Checking a long plan, using it and drawing it each take time, so the page gets its turn between them.
        const rest = countOf(asked) > PLANNED_AT_ONCE ? pause : () => Promise.resolve();
        await rest();
        if (plan?.ok && !signal.aborted)
            canBeCut(...asked, plan);
        await rest();
        if (!plan || signal.aborted)
            return;
        this.#keep(key, plan);
        this.#job = undefined;
        const isForLater = this.#later.has(key);
        this.renew();
        await rest();
        // Another plan that the same answer waits for may be in work by now.
        if (this.#job)
            return;
        if (this.#used.has(key))
            this.tell(true);
        else if (isForLater)
            this.tell(false);
    }
}

export { BackgroundPlans };
