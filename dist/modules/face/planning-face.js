import { isServer } from 'lit';
import { BackgroundPlans } from './background-plans.js';
import { Face } from './face.js';

/** A face that plans how to cut its cloth in the background. */
class PlanningFace extends Face {
    constructor() {
        super(...arguments);
        this.plans = new BackgroundPlans(() => this.renew(), (ready) => {
            if (!ready)
                this.renew();
            this.requestUpdate();
            if (ready)
                this.tell('change');
        });
    }
    connectedCallback() {
        super.connectedCallback();
        // If the element was removed while a plan was being made, that plan has stopped.
        if (this.hasUpdated)
            this.reckonAgain();
    }
    disconnectedCallback() {
        super.disconnectedCallback();
        this.plans.stop();
    }
}
/** The same for an element that also reads its content. */
class ReadingFace extends PlanningFace {
    constructor() {
        super(...arguments);
        /** The changes after which it reads again. */
        this.watched = { childList: true, subtree: true };
    }
    #watch;
    /** Whether reading waits until it is drawn. */
    putsOff() {
        return false;
    }
    connectedCallback() {
        super.connectedCallback();
        if (isServer)
            return;
        this.watch(this);
        if (!this.putsOff())
            this.readInside();
    }
    /** Reads again when the content changes, also while the element is outside the page. */
    watch(around) {
        this.#watch ??= new MutationObserver(() => this.readInside());
        this.#watch.observe(around, this.watched);
    }
}

export { PlanningFace, ReadingFace };
