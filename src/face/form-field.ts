import { LitElement, type PropertyDeclarations, type ReactiveElement } from 'lit';
import { comes, goesNow, isAsked, isCrowd, isDrawn, turnOf } from './turns.js';

/** What keeps a form from being sent, in words for the reader. */
export interface Fault {
  flag: 'badInput' | 'valueMissing' | 'rangeOverflow';
  message: string;
}

/** A field of the form around it, as the browser's own are: name, value, validity, reset, disabled, restored on back. */
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
  /** What stood in each property that the reader has changed, before she did. */
  #given: Record<string, unknown> = {};
  /** What she has put there. */
  #typedIn: Record<string, unknown> = {};
  #complaint = '';
  /** Disabled by itself or by a fieldset around it. */
  protected off = false;

  /** What a form sends; empty where an input is wrong. */
  abstract get value(): string;

  /** What is wrong, if anything is. */
  protected abstract fault(): Fault | undefined;

  /** The cell the browser shows that at. */
  protected abstract faulty(): HTMLElement | undefined;

  /** What an attribute's text makes of a property; undefined where there is no attribute. */
  protected abstract written(property: string): unknown;

  /** What is typed in belongs to other values now. */
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

  /** Whether a form checks it: not where it is disabled. */
  get willValidate(): boolean {
    return this.#internals.willValidate;
  }

  /**
   * What keeps a form from being sent: `badInput` for a wrong input, `valueMissing` for one still to be filled in where it is
   * `required`, `rangeOverflow` for more than `max`, `customError` for what the page said.
   */
  get validity(): ValidityState {
    return this.#upToDate.validity;
  }

  /** The sentence about it; empty where nothing is wrong. */
  get validationMessage(): string {
    return this.#upToDate.validationMessage;
  }

  /** Whether it is valid; fires `invalid` where it is not. */
  checkValidity(): boolean {
    return this.#upToDate.checkValidity();
  }

  /** The same, and the browser shows the sentence at the cell. */
  reportValidity(): boolean {
    return this.#upToDate.reportValidity();
  }

  /** Makes it invalid for a reason of the page's own, in words for the reader; an empty text takes the reason back. */
  setCustomValidity(message: string): void {
    this.#complaint = message;
    this.send();
  }

  override connectedCallback(): void {
    super.connectedCallback();
    if (!this.hasUpdated) comes(this);
    this.addEventListener('click', this.#clicked);
    this.addEventListener('invalid', this.#opened);
  }

  /** Firefox asks for the focus of the element itself, not of the cell that is wrong; it may have it just then. */
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

  /** A click on a label comes as one on the element itself. */
  #clicked = (event: Event): void => {
    if (this.labels.length && event.composedPath()[0] === this) this.focus();
  };

  /** A form may be sent before the sheet is drawn anew. */
  override requestUpdate(...of: Parameters<ReactiveElement['requestUpdate']>): void {
    super.requestUpdate(...of);
    if (of[0] !== undefined && this.hasUpdated && this.form) this.send();
  }

  /** Whether it is drawn before its turn. */
  #isNow = false;
  /** Whether it was drawn in its turn, as one of very many: far off the screen it is not laid out. */
  protected isOneOfMany = false;

  /** Of very many sheets each is drawn when its turn comes, unless it is in a form. */
  protected override scheduleUpdate(): void | Promise<unknown> {
    const draw = (): void => {
      isDrawn(this);
      void super.scheduleUpdate();
    };
    if (this.hasUpdated || this.#isNow || this.form || !isCrowd()) return draw();
    this.isOneOfMany = true;
    return turnOf(this, draw);
  }

  protected override getUpdateComplete(): Promise<boolean> {
    if (!this.hasUpdated) isAsked(this);
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
    // An attribute says what it starts with, even one that the page changed since.
    for (const key in this.#given) this.own[key] = this.written(key) ?? this.#given[key];
    this.#given = {};
    this.#typedIn = {};
    this.send();
    this.startAgain();
  }

  formStateRestoreCallback(state: string, mode: string): void {
    // What a browser fills in by itself is an amount, and those are reckoned here.
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
