import { LitElement } from 'lit';
import { follow, unfollow, asksFor, canWait, drawLater, drawSoon } from './out-of-sight.js';
import { comes, isCrowd, turnOf, isAsked, goesNow, isDrawn } from './turns.js';

/** A field of a form, like the browser's own: name, value, validity, reset, disabled, restored after “back”. */
class FormField extends LitElement {
    constructor() {
        super(...arguments);
        this.#internals = this.attachInternals();
        /** The value of each property before the reader changed it. */
        this.#given = {};
        /** The value that she gave it. */
        this.#typedIn = {};
        this.#complaint = '';
        /** Disabled by itself or by a fieldset around it. */
        this.off = false;
        /** Firefox sets the focus to the element itself, not to the wrong cell. So the element can have the focus at that moment. */
        this.#opened = () => {
            const isAuthors = this.hasAttribute('tabindex');
            if (!isAuthors)
                this.tabIndex = -1;
            setTimeout(() => {
                const { shadowRoot } = this;
                if (this.matches(':focus') && !shadowRoot.activeElement)
                    this.faulty()?.focus();
                if (isAuthors)
                    return;
                const over = () => this.removeAttribute('tabindex');
                // Chromium would take the focus away from the cell with it.
                if (shadowRoot.activeElement)
                    this.addEventListener('focusout', over, { once: true });
                else
                    over();
            });
        };
        /** The browser sends a click on a label to the element itself. */
        this.#clicked = (event) => {
            if (this.labels.length && event.composedPath()[0] === this)
                this.focus();
        };
        /** Whether it is drawn before its turn. */
        this.#isNow = false;
        /** Whether it was drawn in its turn, as one of very many. Such an element is not laid out while it is far off the screen. */
        this.isOneOfMany = false;
    }
    /** It is a field of the form around it, under its `name`. */
    static { this.formAssociated = true; }
    static { this.properties = {
        name: { reflect: true },
        required: { type: Boolean, reflect: true },
    }; }
    #internals;
    /** The value of each property before the reader changed it. */
    #given;
    /** The value that she gave it. */
    #typedIn;
    #complaint;
    /** The form this element belongs to, if any. */
    get form() {
        return this.#internals.form;
    }
    /** No cell can be changed, and a form sends nothing of it. Default false. */
    get disabled() {
        return this.hasAttribute('disabled');
    }
    set disabled(isOff) {
        this.toggleAttribute('disabled', !!isOff);
    }
    /** The kind of form field, as the browser's own fields name theirs: the element's tag name. */
    get type() {
        return this.localName;
    }
    /** The `<label>` elements that name it. */
    get labels() {
        return this.#internals.labels;
    }
    /** Whether a form checks it. It does not if it is disabled. */
    get willValidate() {
        return this.#internals.willValidate;
    }
    /**
     * Why the form cannot be sent: `badInput` for a wrong input, `valueMissing` for a missing one if it is `required`,
     * `rangeOverflow` for more than `max`, `customError` for what the page said.
     */
    get validity() {
        return this.#upToDate.validity;
    }
    /** The sentence about it, or empty if nothing is wrong. */
    get validationMessage() {
        return this.#upToDate.validationMessage;
    }
    /** Whether it is valid. Fires `invalid` if it is not. */
    checkValidity() {
        return this.#upToDate.checkValidity();
    }
    /** The same, and the browser shows the sentence at the cell. */
    reportValidity() {
        return this.#upToDate.reportValidity();
    }
    /** Makes it invalid for the page's own reason, in words for the reader. An empty text takes the reason back. */
    setCustomValidity(message) {
        this.#complaint = message;
        this.send();
    }
    connectedCallback() {
        super.connectedCallback();
        if (this.hasUpdated)
            follow(this);
        else
            comes(this);
        this.addEventListener('click', this.#clicked);
        this.addEventListener('invalid', this.#opened);
    }
    disconnectedCallback() {
        super.disconnectedCallback();
        unfollow(this);
    }
    firstUpdated() {
        follow(this);
    }
    /** Firefox sets the focus to the element itself, not to the wrong cell. So the element can have the focus at that moment. */
    #opened;
    /** The browser sends a click on a label to the element itself. */
    #clicked;
    /** A form may be sent before the element is drawn again. */
    requestUpdate(...of) {
        asksFor(this, of[0]);
        super.requestUpdate(...of);
        if (of[0] !== undefined && this.hasUpdated && this.form)
            this.send();
    }
    /** Whether it is drawn before its turn. */
    #isNow;
    /** If there are very many elements, each is drawn in its turn, except those in a form. */
    scheduleUpdate() {
        const draw = () => {
            isDrawn(this);
            void super.scheduleUpdate();
        };
        if (this.hasUpdated && canWait(this))
            return drawLater(this, draw);
        if (this.hasUpdated || this.#isNow || this.form || !isCrowd())
            return draw();
        this.isOneOfMany = true;
        return turnOf(this, draw);
    }
    getUpdateComplete() {
        if (this.hasUpdated)
            drawSoon(this);
        else
            isAsked(this);
        return super.getUpdateComplete();
    }
    /** Draws it before others that wait. */
    drawNow() {
        this.#isNow = true;
        goesNow(this);
    }
    formDisabledCallback(isOff) {
        this.off = isOff;
        this.requestUpdate();
    }
    formResetCallback() {
        // The attribute is the value to start with, also if the page has changed it since.
        for (const key in this.#given)
            this.own[key] = this.written(key) ?? this.#given[key];
        this.#given = {};
        this.#typedIn = {};
        this.send();
        this.startAgain();
    }
    formStateRestoreCallback(state, mode) {
        // A browser would fill in an amount, but amounts are reckoned here.
        if (mode !== 'restore')
            return;
        for (const [key, value] of Object.entries(JSON.parse(state)))
            this.change(key, value);
        this.startAgain();
    }
    /** Sets a property for the reader; a reset sets it back. */
    change(key, value) {
        if (!(key in this.#given))
            this.#given[key] = this.own[key];
        this.own[key] = this.#typedIn[key] = value;
    }
    /** Its properties, by name. */
    get own() {
        return this;
    }
    get #upToDate() {
        this.send();
        return this.#internals;
    }
    /** Hands the form its value, what the reader typed to get it, and what is wrong. */
    send() {
        const fault = this.fault();
        this.#internals.setFormValue(this.value || null, JSON.stringify(this.#typedIn));
        this.#internals.setValidity({ customError: !!this.#complaint, ...(fault && { [fault.flag]: true }) }, this.#complaint || fault?.message, this.faulty());
    }
}

export { FormField };
