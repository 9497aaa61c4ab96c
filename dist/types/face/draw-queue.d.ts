/** Elements that wait to be drawn, from the top of the page on, so that the page reacts between them. */
export declare class DrawQueue {
    #private;
    readonly start: () => Promise<void>;
    readonly slice: number;
    /**
     * @param start is what they wait for before the first is drawn.
     * @param slice milliseconds of drawing before the page has its turn again.
     */
    constructor(start: () => Promise<void>, slice: number);
    get isEmpty(): boolean;
    has(element: Element): boolean;
    /** Somebody waits for it. */
    ask(element: Element): void;
    /** Draws an element now, before all others. */
    now(element: Element): void;
    /** Draws an element when its turn comes. */
    add(element: Element, draw: () => void): Promise<void>;
}
