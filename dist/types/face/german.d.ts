/** Loads the German words: few pages ask for them. In the bundles they are a file of their own; see tests/tools/bundle.mjs. */
export declare const loadGerman: () => Promise<typeof import("../words/de/de.js")>;
