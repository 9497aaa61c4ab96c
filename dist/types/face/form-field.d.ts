import { LitElement, type PropertyDeclarations, type ReactiveElement } from 'lit';
/** What keeps a form from being sent, in words for the reader. */
export interface Fault {
    flag: 'badInput' | 'valueMissing' | 'rangeOverflow';
    message: string;
}
/** A field of the form around it, as the browser's own are: name, value, validity, reset, disabled, restored on back. */
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
    get form(): HTMLFormElement | null;
    /** No cell can be changed, and a form sends nothing of it. Default false. */
    get disabled(): boolean;
    set disabled(isOff: boolean);
    /** The kind of form field, as the browser's own fields name theirs: the element's tag name. */
    get type(): string;
    /** The `<label>` elements that name it. */
    get labels(): NodeList;
    /** Whether a form checks it: not where it is disabled. */
    get willValidate(): boolean;
    /**
     * What keeps a form from being sent: `badInput` for a wrong input, `valueMissing` for one still to be filled in where it is
     * `required`, `rangeOverflow` for more than `max`, `customError` for what the page said.
     */
    get validity(): ValidityState;
    /** The sentence about it; empty where nothing is wrong. */
    get validationMessage(): string;
    /** Whether it is valid; fires `invalid` where it is not. */
    checkValidity(): boolean;
    /** The same, and the browser shows the sentence at the cell. */
    reportValidity(): boolean;
    /** Makes it invalid for a reason of the page's own, in words for the reader; an empty text takes the reason back. */
    setCustomValidity(message: string): void;
    connectedCallback(): void;
    /** A form may be sent before the sheet is drawn anew. */
    requestUpdate(...of: Parameters<ReactiveElement['requestUpdate']>): void;
    /** Whether it was drawn in its turn, as one of very many: far off the screen it is not laid out. */
    protected isOneOfMany: boolean;
    /** Of very many sheets each is drawn when its turn comes, unless it is in a form. */
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
