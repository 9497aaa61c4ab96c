import { breathe } from '../planner/breathe.js';

/** At most this many elements are drawn at once when they come into a page together. More of them take turns, so that the page reacts. */
const AT_ONCE = 12;
/** Milliseconds of drawing before the page has its turn again. */
const SLICE = 40;
/** Elements in the page that are not drawn yet. */
const undrawn = new Set();
/** Those that wait for their turn, each with the function that draws it; and the same, sorted from the end of the page. */
const waiting = new Map();
let fromEnd = [];
/** Those that somebody waits for. They come first, but one after another, because a page may wait for all. */
let asked = [];
/** A sheet has come into the page. */
const comes = (sheet) => void undrawn.add(sheet);
/** It is being drawn. */
const isDrawn = (sheet) => void undrawn.delete(sheet);
/** Whether there are so many that they take turns. */
const isCrowd = () => waiting.size > 0 || undrawn.size > AT_ONCE;
/** Somebody waits for it. */
const isAsked = (sheet) => {
    if (isCrowd())
        asked.push(sheet);
};
/** Draws an element now, before all others. */
const goesNow = (sheet) => {
    const draw = waiting.get(sheet);
    waiting.delete(sheet);
    draw?.();
};
/** Before printing, all elements are drawn. */
const allGo = () => [...waiting.keys()].forEach(goesNow);
/** A worksheet comes before its parts. */
const sorted = () => [...waiting.keys()].sort((a, b) => a.compareDocumentPosition(b) & Node.DOCUMENT_POSITION_PRECEDING ? -1 : 1);
const takeTurns = async () => {
    addEventListener('beforeprint', allGo);
    while (waiting.size) {
        await breathe();
        for (const end = performance.now() + SLICE; waiting.size && performance.now() < end;) {
            if (!fromEnd.length)
                fromEnd = sorted();
            const next = asked.shift() ?? fromEnd.pop();
            if (next)
                goesNow(next);
            // What it tells those around it comes first.
            await Promise.resolve();
        }
    }
    asked = [];
    removeEventListener('beforeprint', allGo);
};
/** Draws a sheet when its turn comes, from the top of the page. */
const turnOf = (sheet, draw) => new Promise((done, fail) => {
    fromEnd = [];
    waiting.set(sheet, () => {
        // An error reaches only those who wait for this element, not the other elements.
        void new Promise((drawn) => {
            draw();
            drawn();
        }).then(done, fail);
    });
    if (waiting.size === 1)
        void takeTurns();
});

export { comes, goesNow, isAsked, isCrowd, isDrawn, turnOf };
