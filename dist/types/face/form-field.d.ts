import { LitElement, type PropertyDeclarations, type ReactiveElement } from 'lit';
/** What keeps a form from being sent, in words for the reader. */
export interface Fault {
    flag: 'badInput' | 'valueMissing' | 'rangeOverflow';
    message: string;
}
/** A field of a form, like the browser's own: name, value, validity, reset, disabled, restored after “back”. */
export declare abstract class FormField extends LitElement {
    #private;
    /** It is a field of the form around it, under its `name`. */
    static formAssociated: boolean;
    static properties: PropertyDeclarations;
    /** The form field's name; its value is the amount to buy. Default none. */
    name: string | undefined;
    /** In a form, an input that is still to be filled in is not valid. Default false: nothing is sent then. */
    required: boolean;
    /** Disabled by itself or by a fieldset around it. */
    protected off: boolean;
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
    get form(): HTMLFormElement | null;
    /** No cell can be changed, and a form sends nothing of it. Default false. */
    get disabled(): boolean;
    set disabled(isOff: boolean);
    /** The kind of form field, as the browser's own fields name theirs: the element's tag name. */
    get type(): string;
    /** The `<label>` elements that name it. */
    get labels(): NodeList;
    /** Whether a form checks it. It does not if it is disabled. */
    get willValidate(): boolean;
    /**
     * Why the form cannot be sent: `badInput` for a wrong input, `valueMissing` for a missing one if it is `required`,
     * `rangeOverflow` for more than `max`, `customError` for what the page said.
     */
    get validity(): ValidityState;
    /** The sentence about it, or empty if nothing is wrong. */
    get validationMessage(): string;
    /** Whether it is valid. Fires `invalid` if it is not. */
    checkValidity(): boolean;
    /** The same, and the browser shows the sentence at the cell. */
    reportValidity(): boolean;
    /** Makes it invalid for the page's own reason, in words for the reader. An empty text takes the reason back. */
    setCustomValidity(message: string): void;
    connectedCallback(): void;
    disconnectedCallback(): void;
    protected firstUpdated(): void;
    /** A form may be sent before the element is drawn again. */
    requestUpdate(...of: Parameters<ReactiveElement['requestUpdate']>): void;
    /** Whether it was drawn in its turn, as one of very many. Such an element is not laid out while it is far off the screen. */
    protected isOneOfMany: boolean;
    /** If there are very many elements, each is drawn in its turn, except those in a form. */
    protected scheduleUpdate(): void | Promise<unknown>;
    protected getUpdateComplete(): Promise<boolean>;
    /** Draws it before others that wait. */
    protected drawNow(): void;
    formDisabledCallback(isOff: boolean): void;
    formResetCallback(): void;
    formStateRestoreCallback(state: string, mode: string): void;
    /** Sets a property for the reader; a reset sets it back. */
    protected change(key: string, value: unknown): void;
    /** Its properties, by name. */
    protected get own(): Record<string, unknown>;
    /** Hands the form its value, what the reader typed to get it, and what is wrong. */
    protected send(): void;
}
