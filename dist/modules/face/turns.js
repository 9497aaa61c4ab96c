import { breathe } from '../planner/breathe.js';

/** So few sheets are drawn at once when they come into a page together. More of them take turns, so that the page answers. */
const AT_ONCE = 12;
/** Milliseconds of drawing before the page has its turn again. */
const SLICE = 40;
/** Sheets that stand in a page and are not drawn yet. */
const undrawn = new Set();
/** Those of them that wait for their turn, each with what draws it; and all of these from the end of the page. */
const waiting = new Map();
let fromEnd = [];
/** Those that somebody waits for: they come first, and yet one after another, for a page may wait for all. */
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
/** Draws a sheet that waits, whoever is before it. */
const goesNow = (sheet) => {
    const draw = waiting.get(sheet);
    waiting.delete(sheet);
    draw?.();
};
/** What is printed is whole. */
const allGo = () => [...waiting.keys()].forEach(goesNow);
/** A worksheet comes before what stands in it. */
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
        // What throws in it reaches whoever waits for the sheet, and no other sheet.
        void new Promise((drawn) => {
            draw();
            drawn();
        }).then(done, fail);
    });
    if (waiting.size === 1)
        void takeTurns();
});

export { comes, goesNow, isAsked, isCrowd, isDrawn, turnOf };
