import { LitElement } from 'lit';
import { comes, isCrowd, turnOf, isAsked, goesNow, isDrawn } from './turns.js';

/** A field of the form around it, as the browser's own are: name, value, validity, reset, disabled, restored on back. */
class FormField extends LitElement {
    constructor() {
        super(...arguments);
        this.#internals = this.attachInternals();
        /** What stood in each property that the reader has changed, before she did. */
        this.#given = {};
        /** What she has put there. */
        this.#typedIn = {};
        this.#complaint = '';
        /** Disabled by itself or by a fieldset around it. */
        this.off = false;
        /** Firefox asks for the focus of the element itself, not of the cell that is wrong; it may have it just then. */
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
        /** A click on a label comes as one on the element itself. */
        this.#clicked = (event) => {
            if (this.labels.length && event.composedPath()[0] === this)
                this.focus();
        };
        /** Whether it is drawn before its turn. */
        this.#isNow = false;
        /** Whether it was drawn in its turn, as one of very many: far off the screen it is not laid out. */
        this.isOneOfMany = false;
    }
    /** It is a field of the form around it, under its `name`. */
    static { this.formAssociated = true; }
    static { this.properties = {
        name: { reflect: true },
        required: { type: Boolean, reflect: true },
    }; }
    #internals;
    /** What stood in each property that the reader has changed, before she did. */
    #given;
    /** What she has put there. */
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
    /** Whether a form checks it: not where it is disabled. */
    get willValidate() {
        return this.#internals.willValidate;
    }
    /**
     * What keeps a form from being sent: `badInput` for a wrong input, `valueMissing` for one still to be filled in where it is
     * `required`, `rangeOverflow` for more than `max`, `customError` for what the page said.
     */
    get validity() {
        return this.#upToDate.validity;
    }
    /** The sentence about it; empty where nothing is wrong. */
    get validationMessage() {
        return this.#upToDate.validationMessage;
    }
    /** Whether it is valid; fires `invalid` where it is not. */
    checkValidity() {
        return this.#upToDate.checkValidity();
    }
    /** The same, and the browser shows the sentence at the cell. */
    reportValidity() {
        return this.#upToDate.reportValidity();
    }
    /** Makes it invalid for a reason of the page's own, in words for the reader; an empty text takes the reason back. */
    setCustomValidity(message) {
        this.#complaint = message;
        this.send();
    }
    connectedCallback() {
        super.connectedCallback();
        if (!this.hasUpdated)
            comes(this);
        this.addEventListener('click', this.#clicked);
        this.addEventListener('invalid', this.#opened);
    }
    /** Firefox asks for the focus of the element itself, not of the cell that is wrong; it may have it just then. */
    #opened;
    /** A click on a label comes as one on the element itself. */
    #clicked;
    /** A form may be sent before the sheet is drawn anew. */
    requestUpdate(...of) {
        super.requestUpdate(...of);
        if (of[0] !== undefined && this.hasUpdated && this.form)
            this.send();
    }
    /** Whether it is drawn before its turn. */
    #isNow;
    /** Of very many sheets each is drawn when its turn comes, unless it is in a form. */
    scheduleUpdate() {
        const draw = () => {
            isDrawn(this);
            void super.scheduleUpdate();
        };
        if (this.hasUpdated || this.#isNow || this.form || !isCrowd())
            return draw();
        this.isOneOfMany = true;
        return turnOf(this, draw);
    }
    getUpdateComplete() {
        if (!this.hasUpdated)
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
        // An attribute says what it starts with, even one that the page changed since.
        for (const key in this.#given)
            this.own[key] = this.written(key) ?? this.#given[key];
        this.#given = {};
        this.#typedIn = {};
        this.send();
        this.startAgain();
    }
    formStateRestoreCallback(state, mode) {
        // What a browser fills in by itself is an amount, and those are reckoned here.
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
