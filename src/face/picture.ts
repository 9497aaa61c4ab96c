/** Loads what saves a drawing as a file: few readers want one. In the bundles it is a file of its own; see tests/tools/bundle.mjs. */
export const loadPicture = (): Promise<typeof import('./picture-file.js')> => import('./picture-file.js');
