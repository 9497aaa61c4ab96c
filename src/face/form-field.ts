import { LitElement, type PropertyDeclarations, type ReactiveElement } from 'lit';
import { asksFor, canWait, drawLater, drawSoon, follow, unfollow } from './out-of-sight.js';
import { comes, goesNow, isAsked, isCrowd, isDrawn, turnOf } from './turns.js';

/** What keeps a form from being sent, in words for the reader. */
export interface Fault {
  flag: 'badInput' | 'valueMissing' | 'rangeOverflow';
  message: string;
}

/** A field of a form, like the browser's own: name, value, validity, reset, disabled, restored after “back”. */
export abstract class FormField extends LitElement {
  /** It is a field of the form around it, under its `name`. */
  static formAssociated = true;
  static override properties: PropertyDeclarations = {
    name: { reflect: true },
    required: { type: Boolean, reflect: true },
  };

  /** The form field's name; its value is the amount to buy. Default none. */
  declare name: string | undefined;
  /** In a form, an input that is still to be filled in is not valid. Default false: nothing is sent then. */
  declare required: boolean;

  readonly #internals = this.attachInternals();
  /** The value of each property before the reader changed it. */
  #given: Record<string, unknown> = {};
  /** The value that she gave it. */
  #typedIn: Record<string, unknown> = {};
  #complaint = '';
  /** Disabled by itself or by a fieldset around it. */
  protected off = false;

  /** The value for a form. Empty if an input is wrong. */
  abstract get value(): string;

  /** What is wrong, if anything is. */
  protected abstract fault(): Fault | undefined;

  /** The cell where the browser shows the error. */
  protected abstract faulty(): HTMLElement | undefined;

  /** The value that an attribute gives a property, or undefined if there is no attribute. */
  protected abstract written(property: string): unknown;

  /** The values have changed, so the text that is being typed is no longer about them. */
  protected abstract startAgain(): void;

  /** The form this element belongs to, if any. */
  get form(): HTMLFormElement | null {
    return this.#internals.form;
  }

  /** No cell can be changed, and a form sends nothing of it. Default false. */
  get disabled(): boolean {
    return this.hasAttribute('disabled');
  }
  set disabled(isOff: boolean) {
    this.toggleAttribute('disabled', !!isOff);
  }

  /** The kind of form field, as the browser's own fields name theirs: the element's tag name. */
  get type(): string {
    return this.localName;
  }

  /** The `<label>` elements that name it. */
  get labels(): NodeList {
    return this.#internals.labels;
  }

  /** Whether a form checks it. It does not if it is disabled. */
  get willValidate(): boolean {
    return this.#internals.willValidate;
  }

  /**
   * Why the form cannot be sent: `badInput` for a wrong input, `valueMissing` for a missing one if it is `required`,
   * `rangeOverflow` for more than `max`, `customError` for what the page said.
   */
  get validity(): ValidityState {
    return this.#upToDate.validity;
  }

  /** The sentence about it, or empty if nothing is wrong. */
  get validationMessage(): string {
    return this.#upToDate.validationMessage;
  }

  /** Whether it is valid. Fires `invalid` if it is not. */
  checkValidity(): boolean {
    return this.#upToDate.checkValidity();
  }

  /** The same, and the browser shows the sentence at the cell. */
  reportValidity(): boolean {
    return this.#upToDate.reportValidity();
  }

  /** Makes it invalid for the page's own reason, in words for the reader. An empty text takes the reason back. */
  setCustomValidity(message: string): void {
    this.#complaint = message;
    this.send();
  }

  override connectedCallback(): void {
    super.connectedCallback();
    if (this.hasUpdated) follow(this);
    else comes(this);
    this.addEventListener('click', this.#clicked);
    this.addEventListener('invalid', this.#opened);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    unfollow(this);
  }

  protected override firstUpdated(): void {
    follow(this);
  }

  /** Firefox sets the focus to the element itself, not to the wrong cell. So the element can have the focus at that moment. */
  #opened = (): void => {
    const isAuthors = this.hasAttribute('tabindex');
    if (!isAuthors) this.tabIndex = -1;
    setTimeout(() => {
      const { shadowRoot } = this;
      if (this.matches(':focus') && !shadowRoot!.activeElement) this.faulty()?.focus();
      if (isAuthors) return;
      const over = (): void => this.removeAttribute('tabindex');
      // Chromium would take the focus away from the cell with it.
      if (shadowRoot!.activeElement) this.addEventListener('focusout', over, { once: true });
      else over();
    });
  };

  /** The browser sends a click on a label to the element itself. */
  #clicked = (event: Event): void => {
    if (this.labels.length && event.composedPath()[0] === this) this.focus();
  };

  /** A form may be sent before the element is drawn again. */
  override requestUpdate(...of: Parameters<ReactiveElement['requestUpdate']>): void {
    asksFor(this, of[0]);
    super.requestUpdate(...of);
    if (of[0] !== undefined && this.hasUpdated && this.form) this.send();
  }

  /** Whether it is drawn before its turn. */
  #isNow = false;
  /** Whether it was drawn in its turn, as one of very many. Such an element is not laid out while it is far off the screen. */
  protected isOneOfMany = false;

  /** If there are very many elements, each is drawn in its turn, except those in a form. */
  protected override scheduleUpdate(): void | Promise<unknown> {
    const draw = (): void => {
      isDrawn(this);
      void super.scheduleUpdate();
    };
    if (this.hasUpdated && canWait(this)) return drawLater(this, draw);
    if (this.hasUpdated || this.#isNow || this.form || !isCrowd()) return draw();
    this.isOneOfMany = true;
    return turnOf(this, draw);
  }

  protected override getUpdateComplete(): Promise<boolean> {
    if (this.hasUpdated) drawSoon(this);
    else isAsked(this);
    return super.getUpdateComplete();
  }

  /** Draws it before others that wait. */
  protected drawNow(): void {
    this.#isNow = true;
    goesNow(this);
  }

  formDisabledCallback(isOff: boolean): void {
    this.off = isOff;
    this.requestUpdate();
  }

  formResetCallback(): void {
    // The attribute is the value to start with, also if the page has changed it since.
    for (const key in this.#given) this.own[key] = this.written(key) ?? this.#given[key];
    this.#given = {};
    this.#typedIn = {};
    this.send();
    this.startAgain();
  }

  formStateRestoreCallback(state: string, mode: string): void {
    // A browser would fill in an amount, but amounts are reckoned here.
    if (mode !== 'restore') return;
    for (const [key, value] of Object.entries(JSON.parse(state) as object)) this.change(key, value);
    this.startAgain();
  }

  /** Sets a property for the reader; a reset sets it back. */
  protected change(key: string, value: unknown): void {
    if (!(key in this.#given)) this.#given[key] = this.own[key];
    this.own[key] = this.#typedIn[key] = value;
  }

  /** Its properties, by name. */
  protected get own(): Record<string, unknown> {
    return this as unknown as Record<string, unknown>;
  }

  get #upToDate(): ElementInternals {
    this.send();
    return this.#internals;
  }

  /** Hands the form its value, what the reader typed to get it, and what is wrong. */
  protected send(): void {
    const fault = this.fault();
    this.#internals.setFormValue(this.value || null, JSON.stringify(this.#typedIn));
    this.#internals.setValidity(
      { customError: !!this.#complaint, ...(fault && { [fault.flag]: true }) },
      this.#complaint || fault?.message,
      this.faulty(),
    );
  }
}
