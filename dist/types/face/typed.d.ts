import type { Answer } from '../ledger/answer.js';
import type { Issue } from '../ledger/refusal.js';
import type { Good } from './outcome.js';
import { Reckoned } from './reckoned.js';
/** A reckoned field with cells to type in: keyboard, values typed over reckoned ones, and text from before the script came. */
export declare abstract class Typed<A extends Answer = Answer> extends Reckoned<A> {
    #private;
    /**
     * The cell that the reader is typing in: its text; its text, properties and list entries before she started; the last good
     * outcome; whether the text can still become readable; whether it has both sides of the quilt.
     */
    protected editing: {
        id: string;
        text: string;
        before: string;
        own: Record<string, unknown>;
        entries: string[];
        good: Good<A> | undefined;
        isBegun?: boolean;
        isBoth?: boolean;
    } | undefined;
    /** The rows that the value of this cell came from. */
    protected marked: string[];
    /** Goes to the first cell that can be changed. */
    focus(options?: FocusOptions): void;
    protected get goodBefore(): Good<A> | undefined;
    /** All errors, except in a text that the reader is still typing and that can still become right. */
    protected get said(): Issue[];
    constructor();
    protected createRenderRoot(): HTMLElement | DocumentFragment;
    disconnectedCallback(): void;
    /** A shadow root loses its styles when it moves to another document. */
    adoptedCallback(): void;
    protected startAgain(): void;
    protected faulty(): HTMLElement | undefined;
    /** Takes an entry out of a list. The next entry then has its cell. */
    protected takeAway(id: string): void;
    protected typed: ({ target }: Event) => void;
    /**
     * The browser's own `change` stops at the shadow root, so we send one for the page. We send it when the reader leaves the cell,
     * because the browser does not notice text from our own keys.
     */
    protected changed: (event: Event) => void;
    protected tell(type: string): void;
    protected focusIn: ({ target }: {
        target: EventTarget | null;
    }) => void;
    protected pointed: ({ target }: Event) => void;
    /** The first click into a cell of one line selects its text, like the Tab key. Typing then replaces it. */
    protected clicked: ({ target }: Event) => void;
    protected focusOut: ({ target }: Event) => void;
    protected putBack(id: string): void;
    protected typeIn: (sign: string) => void;
    protected keyDown: (event: KeyboardEvent) => void;
    protected switchUnits: () => void;
}
