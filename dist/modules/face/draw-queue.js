import { breathe } from '../planner/breathe.js';

/** Elements that wait to be drawn, from the top of the page on, so that the page reacts between them. */
class DrawQueue {
    /** Those that wait, each with the function that draws it; and the same, sorted from the end of the page. */
    #waiting = new Map();
    #fromEnd = [];
    /** Those that somebody waits for. They come first, but one after another, because a page may wait for all. */
    #asked = [];
    /**
     * @param start is what they wait for before the first is drawn.
     * @param slice milliseconds of drawing before the page has its turn again.
     */
    constructor(start, slice) {
        this.start = start;
        this.slice = slice;
    }
    get isEmpty() {
        return !this.#waiting.size;
    }
    has(element) {
        return this.#waiting.has(element);
    }
    /** Somebody waits for it. */
    ask(element) {
        this.#asked.push(element);
    }
    /** Draws an element now, before all others. */
    now(element) {
        const draw = this.#waiting.get(element);
        this.#waiting.delete(element);
        draw?.();
    }
    /** Draws an element when its turn comes. */
    add(element, draw) {
        return new Promise((done, fail) => {
            this.#fromEnd = [];
            this.#waiting.set(element, () => {
                // An error reaches only those who wait for this element, not the other elements.
                void new Promise((drawn) => {
                    draw();
                    drawn();
                }).then(done, fail);
            });
            if (this.#waiting.size === 1)
                void this.#takeTurns();
        });
    }
    /** Before printing, all elements are drawn. */
    #all = () => [...this.#waiting.keys()].forEach((element) => this.now(element));
    /** A worksheet comes before its parts. */
    #sorted() {
        return [...this.#waiting.keys()].sort((a, b) => a.compareDocumentPosition(b) & Node.DOCUMENT_POSITION_PRECEDING ? -1 : 1);
    }
    async #takeTurns() {
        addEventListener('beforeprint', this.#all);
        await this.start();
        while (!this.isEmpty) {
            for (const end = performance.now() + this.slice; !this.isEmpty && performance.now() < end;) {
                if (!this.#fromEnd.length)
                    this.#fromEnd = this.#sorted();
                const next = this.#asked.shift() ?? this.#fromEnd.pop();
                if (next)
                    this.now(next);
                // What it tells those around it comes first.
                await Promise.resolve();
            }
            await breathe();
        }
        this.#asked = [];
        removeEventListener('beforeprint', this.#all);
    }
}

export { DrawQueue };
