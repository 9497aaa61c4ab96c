import { isServer } from 'lit';
import { BackgroundPlans } from './background-plans.js';
import { QuiltSheet } from './sheet.js';

/** A sheet that also reads what stands inside its element, and plans how to cut it in the background. */
class BackgroundSheet extends QuiltSheet {
    constructor() {
        super(...arguments);
        this.plans = new BackgroundPlans(() => this.renew(), (ready) => {
            if (!ready)
                this.renew();
            this.requestUpdate();
            if (ready)
                this.tell('change');
        });
        /** What to read again for. */
        this.watched = { childList: true, subtree: true };
    }
    #watch;
    connectedCallback() {
        super.connectedCallback();
        if (isServer)
            return;
        this.watch(this);
        this.readInside();
    }
    /** Reads again when something changes in there; that goes on outside the page, where something may be taken out too. */
    watch(around) {
        this.#watch ??= new MutationObserver(() => this.readInside());
        this.#watch.observe(around, this.watched);
    }
    disconnectedCallback() {
        super.disconnectedCallback();
        this.plans.stop();
    }
}

export { BackgroundSheet };
