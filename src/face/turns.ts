import { breathe } from '../planner/breathe.js';
import { DrawQueue } from './draw-queue.js';

/** At most this many elements are drawn at once when they come into a page together. More of them take turns, so that the page reacts. */
const AT_ONCE = 12;
/** Milliseconds of drawing before the page has its turn again. */
const SLICE = 40;

/** Elements in the page that are not drawn yet. */
const undrawn = new Set<Element>();
const queue = new DrawQueue(breathe, SLICE);

/** A sheet has come into the page. */
export const comes = (sheet: Element): void => void undrawn.add(sheet);
/** It is being drawn. */
export const isDrawn = (sheet: Element): void => void undrawn.delete(sheet);

/** Whether there are so many that they take turns. */
export const isCrowd = (): boolean => !queue.isEmpty || undrawn.size > AT_ONCE;

/** Somebody waits for it. */
export const isAsked = (sheet: Element): void => {
  if (isCrowd()) queue.ask(sheet);
};

/** Draws an element now, before all others. */
export const goesNow = (sheet: Element): void => queue.now(sheet);

/** Draws a sheet when its turn comes. */
export const turnOf = (sheet: Element, draw: () => void): Promise<void> => queue.add(sheet, draw);
