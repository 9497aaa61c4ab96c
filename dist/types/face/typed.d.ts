import type { Answer } from '../ledger/answer.js';
import type { Issue } from '../ledger/refusal.js';
import type { Good } from './outcome.js';
import { Reckoned } from './reckoned.js';
/** A reckoned field in whose cells a reader types: with the keyboard, over reckoned values, and before the script came. */
export declare abstract class Typed<A extends Answer = Answer> extends Reckoned<A> {
    #private;
    /**
     * The cell being typed in: what stands there; what stood there when it was entered, as text, as it was set, and beside it in
     * a list; whether it may still become what can be read; whether it holds both of a quilt's sides.
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
    /** The rows that the value of the cell being typed in came from. */
    protected marked: string[];
    /** Goes to the first cell that can be changed. */
    focus(options?: FocusOptions): void;
    protected get goodBefore(): Good<A> | undefined;
    /** What is wrong, but for what is being typed and may still become right. */
    protected get said(): Issue[];
    constructor();
    protected createRenderRoot(): HTMLElement | DocumentFragment;
    disconnectedCallback(): void;
    /** Moving to another document takes a shadow root's styles away. */
    adoptedCallback(): void;
    protected startAgain(): void;
    protected faulty(): HTMLElement | undefined;
    /** Takes an entry out of a list; its cell is then that of the next one. */
    protected takeAway(id: string): void;
    protected typed: ({ target }: Event) => void;
    /**
     * The browser's own `change` stops at the shadow root; the page hears this one. What is typed in changes when it is
     * left, since the browser does not count what a key of the sheet wrote there.
     */
    protected changed: (event: Event) => void;
    protected tell(type: string): void;
    protected focusIn: ({ target }: {
        target: EventTarget | null;
    }) => void;
    protected pointed: ({ target }: Event) => void;
    /** A first click into a cell of one line marks what stands there, as the Tab key does; typing then replaces it. */
    protected clicked: ({ target }: Event) => void;
    protected focusOut: ({ target }: Event) => void;
    protected putBack(id: string): void;
    protected typeIn: (sign: string) => void;
    protected keyDown: (event: KeyboardEvent) => void;
    protected switchUnits: () => void;
}
