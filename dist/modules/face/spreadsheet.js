/** Loads what writes spreadsheet files: few readers want one. In the bundles it is a file of its own; see tests/tools/bundle.mjs. */
const loadSpreadsheet = () => import('./spreadsheet-file.js');

export { loadSpreadsheet };
