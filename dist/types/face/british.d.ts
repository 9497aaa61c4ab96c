/** Loads the British words. In the bundles they are a file of their own; see tests/tools/bundle.mjs. */
export declare const loadBritish: () => Promise<typeof import("../words/en-gb/en-gb.js")>;
