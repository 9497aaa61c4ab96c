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
    // If the element was removed while a plan was being made, that plan has stopped.
    if (this.hasUpdated) this.reckonAgain();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.plans.stop();
  }
}

/** The same for an element that also reads its content. */
export abstract class ReadingFace<A extends Answer = Answer> extends PlanningFace<A> {
  #watch: MutationObserver | undefined;

  /** The changes after which it reads again. */
  protected readonly watched: MutationObserverInit = { childList: true, subtree: true };

  /** Whether reading waits until it is drawn. */
  protected putsOff(): boolean {
    return false;
  }

  /** Reads the content of the element. */
  protected abstract readInside(): void;

  override connectedCallback(): void {
    super.connectedCallback();
    if (isServer) return;
    this.watch(this);
    if (!this.putsOff()) this.readInside();
  }

  /** Reads again when the content changes, also while the element is outside the page. */
  protected watch(around: Node): void {
    this.#watch ??= new MutationObserver(() => this.readInside());
    this.#watch.observe(around, this.watched);
  }
}
