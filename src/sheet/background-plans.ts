import { planCloth, planClothAsync } from '../cutting/plan.js';
import type { Planner } from '../reckon/cutting.js';

/** So few pieces are planned at once; the page does not feel it. */
const PLANNED_AT_ONCE = 30;
/** Plans kept, so that going back to an earlier list is free. */
const MOST_KEPT = 20;

/** Plans long lists in the background, one at a time; asking for another list stops the one under way. */
export class BackgroundPlans {
  readonly #plans = new Map<string, ReturnType<Planner>>();
  #job: { key: string; stop: AbortController; done: number } | undefined;

  /** @param tell is called when a plan is ready, and now and then before. */
  constructor(readonly tell: (ready: boolean) => void) {}

  /** The plan where it is ready; else a message that says how far it is. */
  readonly plan: Planner = (pieces, cloth) => {
    const key = JSON.stringify([pieces, cloth], (_, value: unknown) => (typeof value === 'bigint' ? `${value}` : value));
    const ready = this.#plans.get(key);
    if (ready) return ready;
    if (pieces.reduce((all, { count }) => all + count, 0) <= PLANNED_AT_ONCE) return this.#keep(key, planCloth(pieces, cloth));
    if (this.#job?.key !== key) void this.#start(key, pieces, cloth);
    return { ok: false, message: `The layout is being planned: ${Math.round(this.#job!.done * 100)} % done.` };
  };

  stop(): void {
    this.#job?.stop.abort();
    this.#job = undefined;
  }

  #keep(key: string, plan: ReturnType<Planner>): ReturnType<Planner> {
    if (this.#plans.size >= MOST_KEPT) this.#plans.delete(this.#plans.keys().next().value!);
    this.#plans.set(key, plan);
    return plan;
  }

  async #start(key: string, ...asked: Parameters<Planner>): Promise<void> {
    this.stop();
    const job = (this.#job = { key, stop: new AbortController(), done: 0 });
    const { signal } = job.stop;
    const onProgress = (done: number): void => {
      if (done - job.done < 0.1) return;
      job.done = done;
      this.tell(false);
    };
    const plan = await planClothAsync(...asked, { signal, onProgress }).catch((reason: unknown) => {
      if (!signal.aborted) throw reason;
    });
    if (!plan || signal.aborted) return;
    this.#keep(key, plan);
    this.#job = undefined;
    this.tell(true);
  }
}
