/** Loads the British words. In the bundles they are a file of their own; see tests/tools/bundle.mjs. */
export const loadBritish = (): Promise<typeof import('../words/en-gb/en-gb.js')> =>
  import('../words/en-gb/en-gb.js');
