/** The arithmetic alone, without a page: plain input, plain result. */
export { reckonBacking, type BackingInput, type BackingLayout, type BackingResult } from './reckon/backing.js';
export type { Answer, Cut, Problem, Refused, Row } from './reckon/book.js';
export type { Purchase } from './measure/shop.js';
