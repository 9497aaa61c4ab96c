/** Loads the British words. In the bundles they are a file of their own; see tests/tools/bundle.mjs. */
const loadBritish = () => import('../words/en-gb/en-gb.js');

export { loadBritish };
