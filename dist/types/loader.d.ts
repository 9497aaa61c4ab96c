/**
 * One small script for a page that may have any of the elements: it looks which of them are there, also those that come
 * later, and loads what they need and nothing else.
 */
export {};
