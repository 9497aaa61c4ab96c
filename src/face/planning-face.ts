import { isServer } from 'lit';
import type { Answer } from '../ledger/answer.js';
import { BackgroundPlans } from './background-plans.js';
import { Face } from './face.js';

/** A face that plans how to cut its cloth in the background. */
export abstract class PlanningFace<A extends Answer = Answer> extends Face<A> {
  protected readonly plans = new BackgroundPlans(
    () => this.renew(),
    (ready) => {
      if (!ready) this.renew();
      this.requestUpdate();
      if (ready) this.tell('change');
    },
  );

  override connectedCallback(): void {
    super.connectedCallback();
    // A plan that was under way when it was taken away has stopped.
    if (this.hasUpdated) this.reckonAgain();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.plans.stop();
  }
}

/** The same, for one that also reads what stands inside its element. */
export abstract class ReadingFace<A extends Answer = Answer> extends PlanningFace<A> {
  #watch: MutationObserver | undefined;

  /** What to read again for. */
  protected readonly watched: MutationObserverInit = { childList: true, subtree: true };

  /** Whether reading is put off until it is drawn. */
  protected putsOff(): boolean {
    return false;
  }

  /** Reads what stands inside the element. */
  protected abstract readInside(): void;

  override connectedCallback(): void {
    super.connectedCallback();
    if (isServer) return;
    this.watch(this);
    if (!this.putsOff()) this.readInside();
  }

  /** Reads again when something changes in there; that goes on outside the page, where something may be taken out too. */
  protected watch(around: Node): void {
    this.#watch ??= new MutationObserver(() => this.readInside());
    this.#watch.observe(around, this.watched);
  }
}
