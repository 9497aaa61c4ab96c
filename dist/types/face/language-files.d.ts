/** Loads the words of this language once, and calls `ready` when they are there. If they do not load, the page stays English. */
export declare const askFor: (lang: string, ready: () => void) => void;
