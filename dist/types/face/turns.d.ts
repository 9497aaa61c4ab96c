/** A sheet has come into the page. */
export declare const comes: (sheet: Element) => void;
/** It is being drawn. */
export declare const isDrawn: (sheet: Element) => void;
/** Whether there are so many that they take turns. */
export declare const isCrowd: () => boolean;
/** Somebody waits for it. */
export declare const isAsked: (sheet: Element) => void;
/** Draws an element now, before all others. */
export declare const goesNow: (sheet: Element) => void;
/** Draws a sheet when its turn comes. */
export declare const turnOf: (sheet: Element, draw: () => void) => Promise<void>;
