import { breathe } from '../planner/breathe.js';
import { DrawQueue } from './draw-queue.js';

/** At most this many elements are drawn at once when they come into a page together. More of them take turns, so that the page reacts. */
const AT_ONCE = 12;
/** Milliseconds of drawing before the page has its turn again. */
const SLICE = 40;
/** Elements in the page that are not drawn yet. */
const undrawn = new Set();
const queue = new DrawQueue(breathe, SLICE);
/** A sheet has come into the page. */
const comes = (sheet) => void undrawn.add(sheet);
/** It is being drawn. */
const isDrawn = (sheet) => void undrawn.delete(sheet);
/** Whether there are so many that they take turns. */
const isCrowd = () => !queue.isEmpty || undrawn.size > AT_ONCE;
/** Somebody waits for it. */
const isAsked = (sheet) => {
    if (isCrowd())
        queue.ask(sheet);
};
/** Draws an element now, before all others. */
const goesNow = (sheet) => queue.now(sheet);
/** Draws a sheet when its turn comes. */
const turnOf = (sheet, draw) => queue.add(sheet, draw);

export { comes, goesNow, isAsked, isCrowd, isDrawn, turnOf };
