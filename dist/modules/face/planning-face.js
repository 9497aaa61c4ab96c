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
        // A plan that was under way when it was taken away has stopped.
        if (this.hasUpdated)
            this.reckonAgain();
    }
    disconnectedCallback() {
        super.disconnectedCallback();
        this.plans.stop();
    }
}
/** The same, for one that also reads what stands inside its element. */
class ReadingFace extends PlanningFace {
    constructor() {
        super(...arguments);
        /** What to read again for. */
        this.watched = { childList: true, subtree: true };
    }
    #watch;
    /** Whether reading is put off until it is drawn. */
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
    /** Reads again when something changes in there; that goes on outside the page, where something may be taken out too. */
    watch(around) {
        this.#watch ??= new MutationObserver(() => this.readInside());
        this.#watch.observe(around, this.watched);
    }
}

export { PlanningFace, ReadingFace };
