/** Loads what writes spreadsheet files: few readers want one. In the bundles it is a file of its own; see tests/tools/bundle.mjs. */
export const loadSpreadsheet = (): Promise<typeof import('./spreadsheet-file.js')> =>
  import('./spreadsheet-file.js');
