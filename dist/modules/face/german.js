/** Loads the German words: few pages ask for them. In the bundles they are a file of their own; see tests/tools/bundle.mjs. */
const loadGerman = () => import('../words/de/de.js');

export { loadGerman };
